"""Anneals at another temperature: how much longer or shorter, by one activation energy."""

from __future__ import annotations

import math

from temperbook.metal import guards

GAS = 8.31446261815324  # J/(mol K), SI 2019 exact
ZERO_CELSIUS = 273.15
REACH = 150.0  # K from the known anneal: beyond it one energy no longer says anything


def equivalent_time(time: float, energy: float, temperature: float, to: float) -> float:
    """Time at `to` [degC] that does what `time` does at `temperature` [degC], in the same unit.

    energy: of activation [kJ/mol]. Valid for: one mechanism, within 150 K, a furnace that holds
    its heat. Formula: t exp(Q/R (1/T2 - 1/T1)), in kelvin. Source: Arrhenius' law.
    Errors: ValueError farther away or below absolute zero.
    Example: equivalent_time(60, 123, 160, 150) -> 134.5
    """
    guards.above_zero(time=time, activation_energy=energy)
    if min(temperature, to) <= -ZERO_CELSIUS:
        raise ValueError("a temperature lies above -273.15 degC")
    if abs(to - temperature) > REACH:
        raise ValueError(
            f"{to:g} degC is more than {REACH:g} K away from {temperature:g} degC; so far off one "
            "activation energy says nothing, find an anneal nearer to it"
        )
    inverse = 1 / (to + ZERO_CELSIUS) - 1 / (temperature + ZERO_CELSIUS)
    return time * math.exp(1000 * energy / GAS * inverse)
