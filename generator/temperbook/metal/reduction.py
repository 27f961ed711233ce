"""Reduction: the share of a section that a step takes away, and on which basis it is counted."""

from __future__ import annotations

import math
from typing import Literal

from temperbook.metal import guards
from temperbook.metal.sections import Section

Basis = Literal["thickness", "diameter", "area"]
Stock = Literal["round", "square", "wide"]


def reduction(before: float, after: float) -> float:
    """Fraction [1] taken from a size or an area; negative where it grows.

    before, after: the same measure before and after [mm or mm2], both above zero.
    Valid for: any size above zero. Formula: 1 - after/before. Source: definition.
    Example: reduction(6, 3) -> 0.5
    """
    if min(before, after) <= 0:
        raise ValueError("sizes must be above zero")
    return 1 - after / before


def area_from_linear(fraction: float) -> float:
    """Area reduction [1] of a round or square whose diameter or side falls by `fraction` [1].

    Valid for: 0 <= fraction < 1. Formula: 1 - (1 - r)^2. Source: geometry.
    Example: area_from_linear(0.6) -> 0.84
    """
    guards.fraction(fraction)
    return 1 - (1 - fraction) ** 2


def linear_from_area(fraction: float) -> float:
    """Reduction [1] of diameter or side of a round or square whose area falls by `fraction` [1].

    Valid for: 0 <= fraction < 1. Formula: 1 - sqrt(1 - r). Source: geometry.
    Example: linear_from_area(0.75) -> 0.5
    """
    guards.fraction(fraction)
    return 1 - math.sqrt(1 - fraction)


def on_each_basis(fraction: float, of: Basis, stock: Stock) -> dict[str, float]:
    """The same reduction [1] on each basis that the stock has.

    fraction: reduction [1] of the measure `of`. stock: round (area, diameter), square (area,
    thickness: its side), wide sheet without spread (area, thickness: the same number).
    Errors: ValueError for a measure that the stock does not have.
    """
    guards.fraction(fraction)
    size = {"round": "diameter", "square": "thickness", "wide": "thickness"}.get(stock)
    if size is None:
        raise ValueError(f"`{stock}` is no stock; write round, square or wide")
    if of not in ("area", size):
        raise ValueError(f"{stock} stock has no {of}; it has area and {size}")
    if stock == "wide":
        return {"area": fraction, "thickness": fraction}
    area = fraction if of == "area" else area_from_linear(fraction)
    return {"area": area, size: linear_from_area(area)}


def true_strain(before: Section, after: Section) -> float:
    """Work [1] of going from one section to another: the true strain that hardens the metal.

    Valid for: sections above zero. Formula: ln(A0/A1); to a flat the larger of that and ln(t0/t1),
    since a bar that spreads keeps area while its thickness counts. Source: the handbook's own
    convention (Reduction page).
    """
    by_area = math.log(before.area / after.area)
    if after.shape == "flat":
        return max(by_area, math.log(before.thickness / after.thickness))
    return by_area
