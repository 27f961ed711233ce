"""What formulas take from the table of alloys."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from temperbook.metal.facts import AlloyFacts, Known
from temperbook.metal.register.formula import Given, Tables


def record(given: Given, tables: Tables) -> Mapping[str, Any]:
    """The facts of the alloy that is given, as plain data."""
    found: Mapping[str, Any] = tables["alloys"][given["alloy"]]
    return found


def facts(plain: Mapping[str, Any]) -> AlloyFacts:
    """The same facts as an object: composition, density and figures; words are left out."""
    return AlloyFacts(
        id=plain["id"],
        name=plain["name"],
        composition=plain["composition"],
        density=plain["density"],
        density_how=plain["density_how"],
        figures={
            quantity: tuple(Known(**{**row, "sources": tuple(row["sources"])}) for row in rows)
            for quantity, rows in plain["figures"].items()
        },
    )


def composition(given: Given, tables: Tables) -> Mapping[str, float]:
    """The composition that is given, or the alloy's [percent by element]."""
    if "composition" in given:
        shares: Mapping[str, float] = given["composition"]
        return shares
    found: Mapping[str, float] = record(given, tables)["composition"]
    return found


def density(given: Given, tables: Tables) -> float:
    """The density that is given, or the alloy's [g/cm3]. Errors: ValueError where none is known."""
    if "density" in given:
        return float(given["density"])
    found = record(given, tables)
    if found["density"] is None:
        raise ValueError(f"no density of {found['name']} is known; give density instead")
    return float(found["density"])


def hold_bench(plain: Mapping[str, Any]) -> None:
    """Refuses an alloy that no bench melts. Errors: ValueError that says what to do instead."""
    if plain["melt"] in REFUSED:
        raise ValueError(f"{plain['name']} {REFUSED[plain['melt']]}")


REFUSED = {
    "buy-stock": "is not melted at a bench; buy it as stock",
    "licensed": "is melted by licensed refiners alone; buy it as stock",
    "never": "is never melted at a bench; buy the stock or leave it to a licensed refiner",
}
