"""What a wire bears, and how many grains lie across it."""

from __future__ import annotations

import math

from temperbook.metal import guards


def breaking_load(diameter: float, tensile: float) -> float:
    """Load [N] that breaks a wire: diameter [mm], tensile strength [MPa]. Formula: pi d^2/4 s.

    Example: breaking_load(1.0, 300) -> 235.6
    """
    guards.above_zero(diameter=diameter, tensile=tensile)
    return math.pi * diameter**2 / 4 * tensile


def grains_across(diameter: float, grain_size: float) -> float:
    """Grains [1] across a wire: diameter and grain size [mm]. Formula: d / g.

    Example: grains_across(0.5, 0.05) -> 10
    """
    guards.above_zero(diameter=diameter, grain_size=grain_size)
    return diameter / grain_size
