"""Registered formulas of a composition: density, atomic shares, fineness."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from temperbook.metal import mixture
from temperbook.metal.register import alloys
from temperbook.metal.register.formula import Answer, Formula, Given, Said, Tables, listed
from temperbook.metal.register.inputs import alloy, composition, number

GOLD = "Au"


def _density(given: Given, tables: Tables) -> Answer:
    density = mixture.density_by_mixing(alloys.composition(given, tables), tables["densities"])
    errors = [row["error"] for row in tables["mixing-errors"]]
    notes = []
    if errors:
        values = {"count": float(len(errors)), "least": min(errors), "most": max(errors)}
        notes.append(Said("error", values))
    return Answer({"density": density}, tuple(notes))


def _atomic_percent(given: Given, tables: Tables) -> Answer:
    return Answer(mixture.atomic_percent(given["composition"], tables["atomic-masses"]))


def _fineness(given: Given, tables: Tables) -> Answer:
    if "carat" in given:
        fineness = mixture.fineness_from_carat(given["carat"])
        carat = given["carat"]
    else:
        fineness = given["fineness"]
        carat = mixture.carat_from_fineness(fineness)
    return Answer({"carat": carat, "fineness": fineness}, _nearest(fineness, tables["finenesses"]))


def _nearest(fineness: float, standards: Sequence[Mapping[str, Any]]) -> tuple[Said, ...]:
    """Notes of the legal standards of gold at or below a fineness [per mille] and above it.

    Law cuts the fraction off: 22 ct is marked 916, so a standard is met from its whole number on.
    """
    gold = [row for row in standards if row["element"] == GOLD]
    below = [row["fineness"] for row in gold if row["fineness"] <= fineness + 1e-9]
    above = [row["fineness"] for row in gold if row["fineness"] > fineness + 1e-9]
    notes = []
    if below:
        notes.append(_standard("standard-reached", max(below), gold))
    if above:
        notes.append(_standard("standard-above", min(above), gold))
    return tuple(notes)


def _standard(note: str, fineness: float, gold: Sequence[Mapping[str, Any]]) -> Said:
    where = {row["where"]: None for row in gold if row["fineness"] == fineness}
    return Said(note, {"fineness": fineness, "where": listed(list(where), "and")})


FORMULAS = (
    Formula(
        "density",
        "Density by mixing",
        {"composition": composition("Composition"), "alloy": alloy()},
        {"density": "g/cm3"},
        _density,
        "rho = 100 / sum(w/rho_i)",
        "ideal mixing of volumes",
        example={"composition": "Cu 90, Sn 10"},
        expected={"density": 8.7594},
        groups=((("composition",), ("alloy",)),),
        notes={
            "error": "Held against the published densities of {count:.0f} alloys of the handbook, "
            "mixing comes out between {least:.1f} and {most:.1f} percent off."
        },
        tables=("densities", "mixing-errors", "alloys"),
        example_tables={"densities": {"Cu": 8.96, "Sn": 7.29}, "mixing-errors": []},
    ),
    Formula(
        "atomic-percent",
        "Share of the atoms",
        {"composition": composition("Composition")},
        {},
        _atomic_percent,
        "x_i = (w_i/M_i) / sum(w/M)",
        "definition",
        example={"composition": "Cu 50, Zn 50"},
        expected={"Cu": 50.7113, "Zn": 49.2887},
        series="percent",
        note="Each element's share of the atoms stands under its symbol.",
        tables=("atomic-masses",),
        example_tables={"atomic-masses": {"Cu": 63.546, "Zn": 65.38}},
    ),
    Formula(
        "fineness",
        "Carat and fineness of gold",
        {"carat": number("Carat", "ct"), "fineness": number("Fineness", "per-mille")},
        {"carat": "ct", "fineness": "per-mille"},
        _fineness,
        "f = 1000 ct/24",
        "definition",
        example={"carat": 18},
        expected={"carat": 18, "fineness": 750},
        groups=((("carat",), ("fineness",)),),
        notes={
            "standard-reached": "Highest legal standard that it reaches: {fineness:g} ({where}).",
            "standard-above": "Next legal standard above it: {fineness:g} ({where}).",
        },
        tables=("finenesses",),
        example_tables={"finenesses": []},
    ),
)
