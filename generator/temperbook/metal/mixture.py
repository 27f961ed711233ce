"""What follows from a composition alone: density by mixing, atomic shares, fineness; and mass."""

from __future__ import annotations

import math
from collections.abc import Mapping

TROY_OUNCE = 31.1034768  # g, exact
PENNYWEIGHT = TROY_OUNCE / 20


def density_by_mixing(shares: Mapping[str, float], densities: Mapping[str, float]) -> float:
    """Density [g/cm3] of an alloy whose elements keep their volumes.

    shares: mass percent by element, summing to 100. densities: [g/cm3] by element.
    Valid for: estimates; real alloys shrink or swell on mixing by up to a few percent.
    Formula: 100 / sum(share / density). Source: ideal mixing of volumes.
    Errors: ValueError for an element without density, or where the shares do not sum to 100.
    Example: density_by_mixing({"Ag": 92.5, "Cu": 7.5}, {"Ag": 10.5, "Cu": 8.96}) -> 10.37
    """
    total = sum(shares.values())
    if abs(total - 100) > 0.05:
        raise ValueError(f"shares sum to {total:g}, not to 100")
    _hold_known(shares, densities, "density")
    return 100 / sum(share / densities[symbol] for symbol, share in shares.items())


def atomic_percent(shares: Mapping[str, float], masses: Mapping[str, float]) -> dict[str, float]:
    """Share of the atoms [percent] by element.

    shares: mass percent by element. masses: atomic masses [u]. Formula: (w/M) / sum(w/M).
    Source: definition. Errors: ValueError for an element without atomic mass.
    Example: atomic_percent({"Cu": 70, "Zn": 30}, {"Cu": 63.546, "Zn": 65.38}) -> Cu 70.6, Zn 29.4
    """
    _hold_known(shares, masses, "atomic mass")
    moles = {symbol: share / masses[symbol] for symbol, share in shares.items()}
    return {symbol: 100 * part / sum(moles.values()) for symbol, part in moles.items()}


def fineness_from_carat(carat: float) -> float:
    """Fineness [per mille] of gold of so many carats. Formula: 1000 * carat / 24. Source:
    definition.

    Valid for: 0 < carat <= 24. Example: fineness_from_carat(18) -> 750
    """
    if not 0 < carat <= 24:
        raise ValueError("a carat lies above 0 and at most at 24")
    return 1000 * carat / 24


def carat_from_fineness(fineness: float) -> float:
    """Carats of gold of a fineness [per mille]. Formula: 24 f / 1000. Source: definition.

    Valid for: 0 < fineness <= 1000. Example: carat_from_fineness(750) -> 18
    """
    if not 0 < fineness <= 1000:
        raise ValueError("a fineness lies above 0 and at most at 1000")
    return 24 * fineness / 1000


def mass(density: float, area: float, length: float) -> float:
    """Mass [g] of stock: density [g/cm3], area [mm2], length [mm]. Formula: rho A l / 1000.

    Valid for: all above zero. Source: definition. Example: mass(10, 36, 100) -> 36
    """
    _above_zero(density, area, length)
    return density * area * length / 1000


def length_of(mass: float, density: float, area: float) -> float:
    """Length [mm] of stock: mass [g], density [g/cm3], area [mm2]. Formula: 1000 m / (rho A).

    The inverse of `mass`, with the same validity. Example: length_of(36, 10, 36) -> 100
    """
    _above_zero(mass, density, area)
    return 1000 * mass / (density * area)


def length_after(length: float, area_before: float, area_after: float) -> float:
    """Length [mm] after working, volume kept: length [mm], areas [mm2]. Formula: l A0 / A1.

    Valid for: all above zero. Source: conservation of volume. Example: length_after(10, 4, 1) -> 40
    """
    _above_zero(length, area_before, area_after)
    return length * area_before / area_after


def _hold_known(shares: Mapping[str, float], known: Mapping[str, float], what: str) -> None:
    missing = [symbol for symbol in shares if symbol not in known]
    if missing:
        raise ValueError(f"no {what} of {', '.join(missing)} is known")


def _above_zero(*sizes: float) -> None:
    if not all(0 < size < math.inf for size in sizes):
        raise ValueError("sizes, lengths and densities lie above zero")
