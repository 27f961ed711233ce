"""Flat rolling: how much the rolls can bite, and a simple estimate of the force on them."""

from __future__ import annotations

import math

from temperbook.metal import guards


def max_draft(roll_radius: float, friction: float) -> float:
    """Greatest draft [mm] that rolls of a radius [mm] draw in by a friction coefficient [1].

    Valid for: rolling without front or back tension. Formula: mu^2 R.
    Source: groover-manufacturing, Eq. 18.8. Example: max_draft(250, 0.12) -> 3.6
    """
    guards.above_zero(roll_radius=roll_radius, friction=friction)
    return friction**2 * roll_radius


def splits_ends(before: float, after: float, roll_radius: float, criterion: float) -> bool:
    """Whether a pass works the skin so much more than the middle that the ends may split.

    before, after: thicknesses [mm]. roll_radius: [mm]. criterion: factor [1] of the source. Valid
    for: a perfectly plastic metal in plane strain; a direction, not a limit. Formula: h0/R > f
    e/(1 - e). Source: split-ends-rolling. Example: splits_ends(5, 4.75, 30, 1.81) -> True
    """
    share = 1 - after / before
    return before / roll_radius > criterion * share / (1 - share)


def contact_length(roll_radius: float, draft: float) -> float:
    """Length of contact [mm] between roll and metal: roll radius and draft [mm].

    Valid for: a draft well below the radius. Formula: sqrt(R d).
    Source: groover-manufacturing, Eq. 18.11. Example: contact_length(250, 3) -> 27.4
    """
    guards.above_zero(roll_radius=roll_radius, draft=draft)
    return math.sqrt(roll_radius * draft)


def mean_flow_stress(
    strain: float, strength_coefficient: float, hardening_exponent: float
) -> float:
    """Flow stress [MPa] averaged from no strain to a true strain [1], for K [MPa] and n [1].

    Valid for: metal that hardens as K e^n, annealed at the start. Formula: K e^n / (1 + n).
    Source: groover-manufacturing, Eq. 17.2. Example: mean_flow_stress(0.128, 275, 0.15) -> 175.7
    """
    guards.above_zero(strain=strain, strength_coefficient=strength_coefficient)
    return strength_coefficient * math.pow(strain, hardening_exponent) / (1 + hardening_exponent)


def roll_force(flow_stress: float, width: float, length: float) -> float:
    """Force [N] that parts the rolls: mean flow stress [MPa], width and contact length [mm].

    Valid for: a first estimate; it leaves out plane strain and the friction hill, so the true force
    is higher. Formula: Y w L. Source: groover-manufacturing, Eq. 18.10.
    Example: roll_force(175.7, 300, 27.4) -> 1 444 254
    """
    guards.above_zero(flow_stress=flow_stress, width=width, length=length)
    return flow_stress * width * length
