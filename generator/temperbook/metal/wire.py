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


def nick_share(diameter: float, depth: float) -> float:
    """Share [1] of a round section that a straight nick on one side takes: diameter, depth [mm].

    Valid for: 0 < depth < diameter; what the notch does to the stress beside it is left out.
    Formula: segment (R^2 acos((R - h)/R) - (R - h) sqrt(2 R h - h^2)) over pi R^2.
    Source: geometry. Errors: ValueError for a nick through the wire.
    Example: nick_share(0.5, 0.05) -> 0.052
    """
    guards.above_zero(diameter=diameter, nick=depth)
    if depth >= diameter:
        raise ValueError(f"a nick of {depth:g} mm goes through the wire")
    radius = diameter / 2
    chord = math.sqrt(2 * radius * depth - depth**2)
    segment = radius**2 * math.acos((radius - depth) / radius) - (radius - depth) * chord
    return segment / (math.pi * radius**2)
