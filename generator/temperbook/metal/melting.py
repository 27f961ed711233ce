"""Heat that melts a charge, from its elements by mass."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from temperbook.metal import guards

ROOM = 20.0  # degC, from which metal is heated


@dataclass(frozen=True)
class Heats:
    """Heat [kJ] up to the solidus, from there until all is liquid, and above; all of it as `whole`.

    A part is None where the melting range is not known.
    """

    to_solidus: float | None
    melting: float
    superheat: float | None
    whole: float


def mixed(shares: Mapping[str, float], values: Mapping[str, float], what: str) -> float:
    """A property per gram mixed by mass: shares [percent] and the elements' values.

    Valid for: specific and latent heats of metals, as an estimate. Formula: sum(w x)/100.
    Source: rule of Kopp and Neumann. Errors: ValueError for an element without value.
    Example: mixed({"Cu": 50, "Zn": 50}, {"Cu": 0.38, "Zn": 0.39}, "specific heat") -> 0.385
    """
    missing = [symbol for symbol in shares if symbol not in values]
    if missing:
        raise ValueError(f"no {what} of {', '.join(missing)} is known")
    return sum(share * values[symbol] for symbol, share in shares.items()) / 100


def mean_specific(cold: float, hot: float | None) -> float:
    """Specific heat [J/(g K)] from a cold to a melting metal: that near room temperature, that at
    1200 K or None.

    Valid for: heating from room to about 1200 K, over which it rises about evenly. Formula: the
    mean of both. Source: arithmetic; for copper within 1 percent of the published mean to 1000
    degC. Example: mean_specific(0.386, 0.48) -> 0.433
    """
    return cold if hot is None else (cold + hot) / 2


def heat_to_liquid(
    mass: float,
    specific: float,
    latent: float,
    temperature: float,
    melting: tuple[float, float] | None,
) -> Heats:
    """Heat [kJ] that brings cold metal to a temperature above its liquidus.

    mass [g], specific heat [J/(g K)], latent heat [J/g], temperature [degC], melting: solidus and
    liquidus [degC], None where they are not known and the temperature is taken to lie above them.
    Valid for: one specific heat from cold to liquid, so an estimate. Formula: m (c (T - 20) + L).
    Source: conservation of energy. Errors: ValueError for a temperature within the melting range.
    """
    hold_hot(temperature)
    guards.above_zero(mass=mass)
    whole = mass * (specific * (temperature - ROOM) + latent) / 1000
    if melting is None:
        return Heats(None, mass * latent / 1000, None, whole)
    solidus, liquidus = melting
    if temperature < liquidus:
        raise ValueError(
            f"at {temperature:g} degC the metal is neither solid nor wholly liquid; ask for a "
            f"temperature below {solidus:g} or from {liquidus:g} degC on"
        )
    return Heats(
        mass * specific * (solidus - ROOM) / 1000,
        mass * (latent + specific * (liquidus - solidus)) / 1000,
        mass * specific * (temperature - liquidus) / 1000,
        whole,
    )


def heat_of_solid(mass: float, specific: float, temperature: float) -> float:
    """Heat [kJ] that warms solid metal: mass [g], specific heat [J/(g K)], temperature [degC].

    Formula: m c (T - 20). Valid for: below the solidus. Source: definition.
    """
    hold_hot(temperature)
    guards.above_zero(mass=mass)
    return mass * specific * (temperature - ROOM) / 1000


def hold_hot(temperature: float) -> None:
    """Holds that metal is heated [degC]. Errors: ValueError."""
    if temperature <= ROOM:
        raise ValueError(f"the temperature lies above the {ROOM:g} degC of the room")
