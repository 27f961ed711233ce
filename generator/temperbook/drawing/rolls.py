"""Picture roll-gap: a light pass that works the skin, beside a firm one that reaches the middle."""

from __future__ import annotations

import math
from dataclasses import dataclass

from temperbook.drawing.draughting import WIDE, arc, curved_arrow, label, titled
from temperbook.drawing.shapes import HAIRLINE, LINE, Circle, Line, Picture, Point, Polygon, Shape

RADIUS = 34.0  # of the rolls [mm]
BEFORE = 7.0  # half the thickness of the bar before the pass [mm]
SHOWN = 11.0  # height of roll that is shown [mm]
REACH = 25.5  # of the bar to each side of the gap [mm]
SHARES = tuple(n / 8 for n in range(-8, 9))  # from the upper face to the lower one


@dataclass(frozen=True)
class Pass:
    """A pass about the middle of its gap [mm]: half the thickness it leaves, and its depth."""

    x: float
    y: float
    half: float
    deep: bool

    @property
    def contact(self) -> float:
        """Length [mm] of the arc of contact, measured along the bar."""
        fall = BEFORE - self.half
        return math.sqrt(2 * RADIUS * fall - fall**2)

    def surface(self, at: float) -> float:
        """Half the thickness [mm] of the bar at a distance [mm] past the gap."""
        if at >= 0:
            return self.half
        if at <= -self.contact:
            return BEFORE
        return self.half + RADIUS - math.sqrt(RADIUS * RADIUS - at * at)

    def lag(self, share: float) -> float:
        """How far [mm] the metal at a share of the half thickness [1] stays behind."""
        if self.deep:
            return -0.9 * (1 - share**2)
        return 3.2 * math.pow(min(1.0, max(0.0, (1 - abs(share)) / 0.42)), 0.8)


def roll_gap() -> Picture:
    """Two bars in the same rolls; worked metal is toned, lines once upright show how it moved."""
    middle = 9.0 + SHOWN + BEFORE
    foot = middle + BEFORE + SHOWN
    light, firm = Pass(30.5, middle, 6.4, False), Pass(89.5, middle, 4.6, True)
    shapes: list[Shape] = []
    for drawn, title, under in (
        (light, "light pass", "only the skin is worked"),
        (firm, "firm pass", "worked right through"),
    ):
        shapes += _bar(drawn) + _roll(drawn, -1.0) + _roll(drawn, 1.0)
        shapes += titled(drawn.x, foot + 7, title, under)
    at = -0.35 * firm.contact
    x, y, roof = firm.x + at, middle - firm.surface(at), middle - firm.half - SHOWN
    shapes += [
        Line(x, y, x, roof, "paper", HAIRLINE),
        Line(x, roof, x, 6.6, "ink", HAIRLINE),
        Circle(x, y, 0.8, "paper", "ink", HAIRLINE),
        label(x, 5.0, "neutral point", anchor="middle"),
        label(5, foot + 20, "Neutral point: there bar and roll move at one speed.", role="ash"),
    ]
    return Picture(
        WIDE,
        foot + 24,
        tuple(shapes),
        "Two bars of one thickness between the same pair of rolls. In the light pass the rolls "
        "touch a short arc; only a thin skin above and below is worked and runs ahead, the middle "
        "lags, and the end of the bar opens like a fish tail. In the firm pass the arc is twice as "
        "long, about as long as the bar is thick; the whole thickness is worked and the end stays "
        "full. A dot on the arc marks the neutral point, where bar and roll move at one speed.",
    )


def _roll(drawn: Pass, way: float) -> list[Shape]:
    """The lower (way 1) or upper (way -1) roll, cut off where the picture ends, with its turn."""
    centre = drawn.y + way * (drawn.half + RADIUS)
    spread = math.degrees(math.acos((RADIUS - SHOWN) / RADIUS))
    face = arc(drawn.x, centre, RADIUS, -way * 90 - spread, -way * 90 + spread, 40)
    turned = curved_arrow(
        drawn.x, centre, RADIUS - 5.5, -way * 90 - way * 11, -way * 90 + way * 11, "paper"
    )
    return [Polygon(face, "ash", "ink", LINE), *turned]


def _bar(drawn: Pass) -> list[Shape]:
    outline = _outline(drawn, -REACH)
    shapes: list[Shape] = [Polygon(outline, "paper", "", HAIRLINE), *_worked(drawn)]
    for n in range(11):
        line = _upright(drawn, -REACH + 3.5 + n * 4.0)
        shapes.append(Polygon(line, "", "ash", HAIRLINE, closed=False))
    shapes.append(Polygon(outline, "", "ink", LINE))
    return shapes


def _face(drawn: Pass, start: float) -> list[Point]:
    """The upper face of the bar [mm], from a distance past the gap to its end."""
    bend, steps = max(start, -drawn.contact), 16
    ats = [start, *(bend * (1 - n / steps) for n in range(steps + 1)), REACH]
    return [(drawn.x + at, drawn.y - drawn.surface(at)) for at in ats]


def _outline(drawn: Pass, start: float) -> tuple[Point, ...]:
    """The bar [mm] from a distance past the gap to its end, as the pass has shaped that."""
    top = _face(drawn, start)
    end = [(drawn.x + REACH - drawn.lag(s), drawn.y + s * drawn.half) for s in SHARES]
    return (*top, *end, *((x, 2 * drawn.y - y) for x, y in reversed(top)))


def _worked(drawn: Pass) -> list[Shape]:
    """The toned part [mm]: the whole bar behind a bowed front, or a skin at each face."""
    start = -drawn.contact
    if drawn.deep:
        front = [(drawn.x + start + 3.5 * (1 - s * s), drawn.y - s * BEFORE) for s in SHARES]
        return [Polygon((*_outline(drawn, start), *front), "hairline", "", HAIRLINE)]
    shapes: list[Shape] = []
    top = _face(drawn, start)
    for way in (-1.0, 1.0):
        face = [(x, drawn.y + way * (drawn.y - y)) for x, y in top]
        tail = [
            (drawn.x + REACH - drawn.lag(s), drawn.y + way * drawn.half * s)
            for s in (0.9, 0.8, 0.7)
        ]
        inner = [
            (x, drawn.y + way * ((drawn.y - y) - 0.3 * drawn.half * min(1.0, (x - top[0][0]) / 4)))
            for x, y in reversed(top)
            if x < tail[-1][0]
        ]
        shapes.append(Polygon((*face, *tail, *inner), "hairline", "", HAIRLINE))
    return shapes


def _upright(drawn: Pass, at: float) -> tuple[Point, ...]:
    """A line that stood upright before the gap, as it stands at a distance [mm] past it."""
    done = min(1.0, max(0.0, (at + drawn.contact) / drawn.contact))
    return tuple(
        (drawn.x + at - done * drawn.lag(s), drawn.y + s * drawn.surface(at)) for s in SHARES
    )
