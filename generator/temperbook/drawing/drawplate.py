"""Picture drawplate-section: one hole of a drawplate cut open, with the wire in it."""

from __future__ import annotations

import math

from temperbook.drawing.draughting import WIDE, arc, arrow, label, leader
from temperbook.drawing.shapes import HAIRLINE, LINE, Circle, Line, Picture, Point, Polygon, Shape

AXIS = 27.0
PLATE = (38.0, 84.0)  # entry and exit face [mm]
HEIGHT = 22.0  # half the height of plate that is shown [mm]
THICK, THIN = 7.4, 5.2  # half the diameter of the wire before and after [mm]
CONE, BEARING, RELIEF = 48.0, 70.0, 75.0  # where cone, bearing and relief begin [mm]
MOUTH = 11.0  # half the width of the cone where it begins [mm]
SLOPE = (MOUTH - THIN) / (BEARING - CONE)
MEETS = BEARING - (THICK - THIN) / SLOPE  # where the wire meets the cone [mm]


def drawplate_section() -> Picture:
    """The hole in section; angles larger than in a real plate, so that they can be seen."""
    shapes: list[Shape] = [Polygon(_wax(way), "paper", "ink", HAIRLINE) for way in (-1.0, 1.0)]
    shapes += [Polygon(_plate(way), "ash", "ink", LINE) for way in (-1.0, 1.0)]
    shapes += _wire()
    shapes += _angle()
    foot = AXIS + HEIGHT
    for x, half, at, words in (
        (44.5, _wall(44.5), 39.0, "mouth"),
        (60.0, _wall(60.0), 56.0, "cone"),
        (72.5, THIN, 72.5, "bearing"),
        (80.0, _wall(80.0), 93.0, "relief"),
    ):
        shapes += [
            Line(x, AXIS + half + 1, x, foot, "paper", HAIRLINE),
            Circle(x, AXIS + half + 1.4, 0.7, "paper", ""),
            Polygon(
                ((x, foot), (x, foot + 1.5), (at, foot + 4)), "", "ink", HAIRLINE, closed=False
            ),
            label(at, foot + 7.6, words, anchor="middle"),
        ]
    shapes += leader(((43.6, AXIS - THICK - 1.4), (30.0, AXIS - THICK - 7)), "wax", anchor="end")
    shapes += arrow(99, AXIS, 115, AXIS)
    shapes.append(label(107, AXIS - 3.5, "pull", bold=True, anchor="middle"))
    shapes.append(label(4, foot + 15, "Angles are drawn larger than they are.", role="ash"))
    return Picture(
        WIDE,
        foot + 19,
        tuple(shapes),
        "One hole of a drawplate cut open, the wire pulled through it from left to right. A "
        "wide mouth holds wax. A cone narrows and squeezes the wire, which touches it only on "
        "the last part; its wall leans to the axis by the half angle. Then comes a short "
        "straight bearing that sets the size, and a relief that opens to the back.",
    )


def _wall(x: float) -> float:
    """Half the width [mm] of the hole at x [mm]."""
    if x < CONE:
        return MOUTH + 6.0 * math.pow((CONE - x) / (CONE - PLATE[0]), 1.6)
    if x < BEARING:
        return MOUTH - (x - CONE) * SLOPE
    return THIN + max(0.0, x - RELIEF) * 0.55


def _plate(way: float) -> tuple[Point, ...]:
    mouth = [PLATE[0] + (CONE - PLATE[0]) * n / 12 for n in range(13)]
    profile = [(x, AXIS + way * _wall(x)) for x in (*mouth, BEARING, RELIEF, PLATE[1])]
    return (*profile, (PLATE[1], AXIS + way * HEIGHT), (PLATE[0], AXIS + way * HEIGHT))


def _wax(way: float) -> tuple[Point, ...]:
    """The wedge of wax between wire and wall."""
    xs = [42.0 + (MEETS - 42.0) * n / 10 for n in range(11)]
    wall = [(x, AXIS + way * _wall(x)) for x in xs]
    return ((40.5, AXIS + way * (THICK)), *wall)


def _wire() -> list[Shape]:
    left, right = 5.0, 96.0
    upper = [
        (left, AXIS - THICK),
        (MEETS, AXIS - THICK),
        (BEARING, AXIS - THIN),
        (right, AXIS - THIN),
    ]
    whole = (*upper, *((x, 2 * AXIS - y) for x, y in reversed(upper)))
    return [
        Polygon(whole, "hairline", "", HAIRLINE),
        Polygon(tuple(upper), "", "ink", LINE, closed=False),
        Polygon(tuple((x, 2 * AXIS - y) for x, y in upper), "", "ink", LINE, closed=False),
        Line(left, AXIS, right, AXIS, "ash", HAIRLINE, dash=True),
    ]


def _angle() -> list[Shape]:
    """The half angle: the cone's wall run on to the axis, and the arc between the two."""
    apex = BEARING + THIN / SLOPE
    degrees = math.degrees(math.atan(SLOPE))
    spot = arc(apex, AXIS, 15.0, 180, 180 + degrees / 2, 1)[-1]
    return [
        Line(BEARING, AXIS - THIN, apex, AXIS, "ink", HAIRLINE),
        Polygon(arc(apex, AXIS, 15.0, 180, 180 + degrees), "", "ink", LINE, closed=False),
        *leader((spot, (spot[0] + 15.5, AXIS - 12.4)), "half angle"),
    ]
