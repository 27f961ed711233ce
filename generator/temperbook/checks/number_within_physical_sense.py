"""Numbers stay inside what can be: percentages, temperatures, densities, hardness."""

from __future__ import annotations

from collections.abc import Iterator

from temperbook.checks.statements import figures
from temperbook.problems import Problem
from temperbook.records.load import Library
from temperbook.records.yaml_reader import shown_location

# unit: lowest, highest. Wide on purpose: this finds slips of a digit or a unit, not rare metals.
SENSE = {
    "degC": (-80, 3500),
    "g/cm3": (1, 23),
    "HV": (5, 1200),
    "HB": (2, 700),
    "MPa": (1, 4000),
    "min": (0.01, 6000),
    "kgf/mm2": (1, 1000),
}
PERCENT_ABOVE_100 = ("elongation",)


def check(library: Library) -> Iterator[Problem]:
    """Figures outside physical sense."""
    for placed, quantity, figure in figures(library):
        low, high = SENSE.get(figure.unit, (float("-inf"), float("inf")))
        if figure.unit == "percent" and quantity not in PERCENT_ABOVE_100:
            low, high = 0, 100
        for end in {e for e in figure.ends if e is not None}:
            if not low <= end <= high:
                yield placed.document.problem(
                    placed.at,
                    f"{shown_location(placed.at)} lies outside physical sense",
                    found=f"{end:g} {figure.unit}",
                    needed=f"{low:g} to {high:g} {figure.unit}",
                    mend="look for a slipped digit or another unit",
                )
