"""How much wider a narrow bar grows as it is rolled flat."""

from __future__ import annotations

import math
from dataclasses import dataclass

from temperbook.metal import guards

MOST_PASSES = 500


@dataclass(frozen=True)
class SpreadRule:
    """Constants [1] of the formula w1/w0 = (h0/h1)^W, W = 10^(factor (w0/h0) (h0/D)^power)."""

    factor: float
    power: float


def width_after_pass(
    width: float, before: float, after: float, roll_diameter: float, rule: SpreadRule
) -> float:
    """Width [mm] after one pass: width, thicknesses and roll diameter [mm].

    Valid for: flat rolls, bars of about rectangular section. Formula: as SpreadRule. Source:
    bench/spread. Example: width_after_pass(6, 6, 5, 60, SpreadRule(-1.269, 0.56)) -> 6.50
    """
    guards.above_zero(width=width, before=before, after=after, roll_diameter=roll_diameter)
    slenderness = width / before * (before / roll_diameter) ** rule.power
    exponent = math.pow(10, rule.factor * slenderness)
    return float(width * (before / after) ** exponent)


def width_after(
    width: float,
    before: float,
    after: float,
    roll_diameter: float,
    per_pass: float,
    rule: SpreadRule,
) -> float:
    """Width [mm] after the equal passes of at most `per_pass` [1] from one thickness to another.

    Sizes [mm]. Valid for: as `width_after_pass`; the anneals between make no difference to it.
    """
    guards.fraction(per_pass, "per-pass")
    strain = math.log(before / after)
    passes = min(MOST_PASSES, max(1, math.ceil(strain / -math.log(1 - per_pass) - 1e-9)))
    ratio = math.exp(-strain / passes)
    thickness = before
    for _ in range(passes):
        width = width_after_pass(width, thickness, thickness * ratio, roll_diameter, rule)
        thickness *= ratio
    return width
