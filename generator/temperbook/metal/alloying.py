"""Changing a composition: what to add to reach another, and what a charge holds."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from temperbook.metal import guards

DUST = 1e-9
NEVER_MELTED = ("As", "Be", "Cd", "Pb")  # at no bench: their fume and dust poison


@dataclass(frozen=True)
class Addition:
    """What to add [g] of each element, and the mass [g] that results."""

    add: dict[str, float]
    new_mass: float


def least_addition(
    stock: Mapping[str, float], target: Mapping[str, float], mass: float
) -> Addition:
    """The least metal that turns `mass` [g] of stock into the target composition.

    stock, target: mass percent by element. Valid for: melting without loss; nothing can be taken
    out but by refining. Formula: new mass = max over elements of m w_stock/w_target.
    Source: conservation of mass. Errors: ValueError where the stock holds an element that the
    target does not.
    Example: least_addition({"Ag": 100}, {"Ag": 92.5, "Cu": 7.5}, 92.5) -> Cu 7.5, new mass 100
    """
    guards.above_zero(mass=mass)
    foreign = [e for e, share in stock.items() if share > 0 and not target.get(e)]
    if foreign:
        raise ValueError(
            f"the stock holds {', '.join(foreign)}, which the target does not; only refining takes "
            "it out"
        )
    new_mass = max(mass * share / target[e] for e, share in stock.items() if share > 0)
    needed = {
        e: new_mass * share / 100 - mass * stock.get(e, 0) / 100 for e, share in target.items()
    }
    return Addition({e: g if abs(g) > DUST * mass else 0.0 for e, g in needed.items()}, new_mass)


def hold_meltable(composition: Mapping[str, float]) -> None:
    """Refuses a composition [percent by element] that no bench melts.

    Errors: ValueError that names arsenic, beryllium, cadmium or lead.
    """
    poison = [element for element in NEVER_MELTED if composition.get(element)]
    if poison:
        raise ValueError(
            f"a charge with {', '.join(poison)} is never melted at a bench; buy the stock or "
            "leave it to a licensed refiner"
        )


def charge(mass: float, crop: float, scalp: float, loss: float) -> float:
    """Metal to melt [g] for a finished mass [g], after cropping, scalping and melting losses [1].

    crop, scalp, loss: fractions of what goes into each of these steps. Valid for: fractions below
    1. Formula: m / ((1 - crop)(1 - scalp)(1 - loss)). Source: conservation of mass.
    Example: charge(100, 0.1, 0.05, 0.01) -> 118.1
    """
    guards.above_zero(mass=mass)
    for name, part in (("crop", crop), ("scalp", scalp), ("loss", loss)):
        guards.fraction(part, name)
    return mass / ((1 - crop) * (1 - scalp) * (1 - loss))


def fineness_addition(mass: float, fineness: float, target: float) -> tuple[float, bool]:
    """Metal to add [g] so that `mass` [g] of one fineness [per mille] reaches another, and whether
    it is fine metal.

    Valid for: 0 < fineness, target < 1000 where fine metal is added. Formula: down m (f/t - 1) of
    alloying metal, up m (t - f)/(1000 - t) of fine metal. Source: conservation of mass.
    Example: fineness_addition(100, 750, 585) -> (28.2, False)
    """
    guards.above_zero(mass=mass)
    if not (0 < fineness <= 1000 and 0 < target <= 1000):
        raise ValueError("a fineness lies above 0 and at most at 1000")
    if target <= fineness:
        return mass * (fineness / target - 1), False
    if target == 1000:
        raise ValueError("no addition makes alloyed metal fine; only refining does")
    return mass * (target - fineness) / (1000 - target), True
