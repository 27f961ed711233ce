"""Drawing through a die: stress and force of a draw, holes of a schedule, the shape of the zone."""

from __future__ import annotations

import math
from collections.abc import Sequence

from temperbook.metal import guards

MOST_DRAWS = 500.0  # more than that is a slip of the pen


def draw_stress(
    before: float, after: float, half_angle: float, friction: float, flow_stress: float
) -> float:
    """Stress [MPa] in the wire as it leaves the die.

    before, after: diameters [mm]. half_angle: of the die [degrees]. friction: [1]. flow_stress:
    mean [MPa]. Valid for: a conical die, one draw. Formula: Y (1 + mu/tan a) phi ln(A0/A1) with
    phi = 0.88 + 0.12 D/L, D = (d0 + d1)/2, L = (d0 - d1)/(2 sin a).
    Source: groover-manufacturing, Eqs. 18.32-18.34.
    Example: draw_stress(2.5, 2, 15, 0.07, 145.4) -> 94.9
    """
    _hold(before, after, half_angle)
    angle = math.radians(half_angle)
    mean = (before + after) / 2
    length = (before - after) / (2 * math.sin(angle))
    uneven = 0.88 + 0.12 * mean / length
    strain = 2 * math.log(before / after)
    return flow_stress * (1 + friction / math.tan(angle)) * uneven * strain


def draw_force(stress: float, after: float) -> float:
    """Force [N] on the wire: draw stress [MPa], diameter behind the die [mm]. Formula: s A1."""
    return stress * math.pi * after**2 / 4


def limit_reduction(half_angle: float, friction: float) -> float:
    """Area reduction [1] at which the drawn wire must break, for metal that no longer hardens.

    Valid for: no back tension. Formula: 1 - B^(-1/(B - 1)), B = 1 + mu/tan a; without friction
    1 - 1/e.
    Source: groover-manufacturing, section 18.5. Example: limit_reduction(6, 0.1) -> 0.5047
    """
    if friction == 0:
        return 1 - math.exp(-1)
    drag = 1 + friction / math.tan(math.radians(half_angle))
    return float(1 - drag ** (-1 / (drag - 1)))


def delta_factor(half_angle: float, area_reduction: float) -> float:
    """Shape of the deformation zone [1]: die half-angle [degrees], area reduction [1].

    High values (light draws, blunt dies) tear the middle of the wire. Valid for: 0 < r < 1.
    Formula: (a/r) (1 + sqrt(1 - r))^2, a in radians. Source: wire-die-delta-chart.
    Example: delta_factor(6, 0.2) -> 1.88
    """
    if not 0 < area_reduction < 1:
        raise ValueError("a reduction lies between 0 and 100 percent")
    return math.radians(half_angle) / area_reduction * (1 + math.sqrt(1 - area_reduction)) ** 2


def even_schedule(before: float, after: float, per_draw: float) -> list[float]:
    """Diameters [mm] of the fewest equal draws that stay within `per_draw` [1] of the area.

    Valid for: after < before, 0 < per_draw < 1. Formula: n = ceil(ln(A0/A1) / -ln(1 - r)).
    Errors: ValueError for more draws than anyone makes. Example: even_schedule(1.0, 0.5, 0.5) ->
    [0.7071, 0.5]
    """
    guards.smaller_after(before, after, "a draw", "diameter")
    if not 0 < per_draw < 1:
        raise ValueError("per-draw lies between 0 and 100 percent")
    needed = 2 * math.log(before / after) / -math.log(1 - per_draw)
    if needed > MOST_DRAWS:
        raise ValueError(f"that would take more than {MOST_DRAWS:g} draws; take more at each")
    draws = max(1, math.ceil(needed - 1e-9))
    ratio = (after / before) ** (1 / draws)
    return [before * ratio**step for step in range(1, draws)] + [after]


def schedule_by_holes(
    before: float, after: float, per_draw: float, holes: Sequence[float]
) -> list[float]:
    """The fewest holes [mm] of a plate that stay within `per_draw` [1] of the area at each draw.

    Errors: ValueError where a gap between holes is wider than one draw may take, or no hole is
    `after`.
    """
    guards.fraction(per_draw, "per-draw")
    usable = through_every_hole(before, after, holes)
    least_ratio = math.sqrt(1 - per_draw)
    chosen: list[float] = []
    size = before
    while size > after:
        reach = [h for h in usable if h < size and h >= size * least_ratio * (1 - 1e-9)]
        if not reach:
            raise ValueError(f"no hole follows {size:g} mm within the limit of one draw")
        size = min(reach)
        chosen.append(size)
    return chosen


def through_every_hole(before: float, after: float, holes: Sequence[float]) -> list[float]:
    """The holes [mm] of a plate from below `before` down to `after`, each used in turn.

    Errors: ValueError where no hole is `after`.
    """
    guards.smaller_after(before, after, "a draw", "diameter")
    usable = sorted({h for h in holes if after <= h < before}, reverse=True)
    if after not in usable:
        raise ValueError(f"the plate has no hole of {after:g} mm")
    return usable


def _hold(before: float, after: float, half_angle: float) -> None:
    guards.smaller_after(before, after, "a draw", "diameter")
    if not 0 < half_angle < 90:
        raise ValueError("a half-angle lies between 0 and 90 degrees")
