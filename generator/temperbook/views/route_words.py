"""Words of a route: sizes as a bench writes them, workings, reductions, limits."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from temperbook.metal.planning.bounds import GIVEN, Bound
from temperbook.metal.sections import Section
from temperbook.records.models import RouteLimit
from temperbook.views.formatting import SPACE, number

# What is done to the metal, by process of a plan: at the head of a run, and as a task of a caution.
WORKING = {
    "forge": ("Forge", "forge"),
    "groove": ("Roll in grooves", "roll"),
    "flat": ("Roll flat", "roll"),
    "draw": ("Draw", "draw"),
}
AS = {"forge": "as forged", "groove": "as rolled", "flat": "as rolled", "draw": "as drawn"}
BASES = ("area", "thickness", "diameter")


def size(section: Section) -> str:
    """The size that a bench measures [mm], to a hundredth: `3.62`."""
    return f"{section.thickness:.2f}"


def section(of: Section) -> str:
    """`40 × 3.62 mm`, `5.50 mm square`, `0.80 mm round`."""
    if of.shape == "flat":
        return f"{number(of.width, 1)}{SPACE}×{SPACE}{size(of)}{SPACE}mm"
    return f"{size(of)}{SPACE}mm {of.shape}"


def percent(value: float) -> str:
    """A percentage without decimals: `49 %`."""
    return f"{number(value, 0)}{SPACE}%"


def reductions(found: Mapping[str, Any], end: Section, before: str = "reduction_") -> list[str]:
    """A reduction on each basis that a plan's data hold: `49 % of the area`.

    end: the section that it leads to; the thickness of a square is called its side.
    """
    keys = ((basis, f"{before}{basis}_pct") for basis in BASES)
    said = {basis: basis for basis in BASES}
    if end.shape == "square":
        said["thickness"] = "side"
    return [f"{percent(found[key])} of the {said[basis]}" for basis, key in keys if key in found]


def limit(bound: Bound) -> str:
    """A limit as its source states it, or as the area where it does not say of what."""
    if bound.of in ("thickness", "diameter"):
        return f"{percent(bound.percent)} of the {bound.of}"
    return f"{percent(bound.area)} of the area"


def limit_note(bound: Bound, set_here: RouteLimit | None) -> str:
    """What must be known of a limit besides its provenance."""
    if bound.how == GIVEN and set_here:
        return "set for this route, for the reason below"
    if bound.of == "not-stated":
        said = "" if abs(bound.area - bound.percent) < 0.5 else f"{percent(bound.percent)}, "
        return f"{said}basis not stated; read in the safe way"
    return ""


def gauges(near: Mapping[str, Mapping[str, Any]]) -> str:
    """The nearest numbers of the gauges with what the size differs: `AWG 20 (−0.01)`."""
    said = []
    for gauge, found in near.items():
        name = gauge.upper()
        differs = f"{found['difference_mm']:+.2f}".replace("-", "−")
        said.append(f"{name}{SPACE}{found['number']}{SPACE}({differs})")
    return ", ".join(said)


def anneals(count: int) -> str:
    """`no anneal`, `1 anneal`, `2 anneals`."""
    return "no anneal" if count == 0 else f"{count}{SPACE}anneal{'s' if count > 1 else ''}"


def passes(count: int, process: str) -> str:
    """`9 passes`, `8 draws`."""
    word = "draw" if process == "draw" else "pass"
    plural = {"draw": "draws", "pass": "passes"}[word]
    return f"{count}{SPACE}{word if count == 1 else plural}"


def length(millimetres: float | None) -> str:
    """`53 mm`, `5.00 m` from a metre on; nothing where it is not known."""
    if millimetres is None:
        return ""
    if millimetres >= 1000:
        return f"{millimetres / 1000:.2f}{SPACE}m"
    return f"{number(millimetres, 0)}{SPACE}mm"
