"""The small marks whose shape tells how a number is known, and those that tell how to cool."""

from __future__ import annotations

from temperbook.drawing.shapes import Circle, Line, Polygon, Rect, Shape

HALF = 12  # straight pieces of a half circle


def provenance(kind: str, x: float, y: float, size: float) -> list[Shape]:
    """A provenance mark of `size` [mm] about a centre: disc, half disc, square, ring or cross."""
    r = size / 2
    width = max(0.2, size / 10)
    if kind == "published":
        return [Circle(x, y, r, fill="ink", width=width)]
    if kind == "judged":
        return [Circle(x, y, r, width=width), _half_disc(x, y, r)]
    if kind == "computed":
        return [Rect(x - r * 0.85, y - r * 0.85, r * 1.7, r * 1.7, fill="ink")]
    if kind == "practice":
        return [Circle(x, y, r, width=width)]
    if kind == "memory":
        return [
            Line(x - r, y - r, x + r, y + r, width=width),
            Line(x - r, y + r, x + r, y - r, width=width),
        ]
    return []


def _half_disc(x: float, y: float, r: float) -> Polygon:
    from math import cos, pi, sin

    angles = [pi / 2 + pi * step / HALF for step in range(HALF + 1)]
    points = tuple((x + r * cos(a), y + r * sin(a)) for a in angles)
    return Polygon(points, fill="ink", stroke="")


def cooling(kind: str, x: float, y: float, size: float) -> list[Shape]:
    """How to cool, as a sign of `size` [mm] about a centre: drop, dark piece then drop, wind,
    slow, flask."""
    r = size / 2
    width = size / 16
    if kind in ("water", "alcohol"):
        return [_drop(x, y, r, filled=kind == "water", width=width)]
    if kind == "water-after-glow":
        piece = Rect(x - r, y - r * 0.25, r * 0.7, r * 0.5, fill="ink")
        return [piece, _drop(x + r * 0.45, y, r * 0.8, filled=True, width=width)]
    if kind == "air":
        rows = (-0.5, 0.0, 0.5)
        return [_wave(x, y + r * row, r * 0.9, width) for row in rows]
    if kind in ("slow", "furnace"):
        box = Rect(x - r * 0.9, y - r * 0.75, r * 1.8, r * 1.5, stroke="ink", width=width)
        return [box, Rect(x - r * 0.4, y - r * 0.1, r * 0.8, r * 0.35, fill="ink")]
    if kind == "either":
        return [
            _drop(x - r * 0.5, y, r * 0.8, filled=True, width=width),
            *(_wave(x + r * 0.6, y + r * row, r * 0.45, width) for row in (-0.3, 0.3)),
        ]
    return []


def _drop(x: float, y: float, r: float, *, filled: bool, width: float) -> Polygon:
    from math import cos, pi, sin

    round_part = [pi * (-0.12 + 1.24 * step / 18) for step in range(19)]
    points = [(x + 0.62 * r * cos(a), y + 0.3 * r + 0.62 * r * sin(a)) for a in round_part]
    return Polygon(((x, y - r), *points), fill="ink" if filled else "", width=width)


def _wave(x: float, y: float, half: float, width: float) -> Polygon:
    from math import pi, sin

    points = tuple(
        (x - half + 2 * half * step / 16, y + half * 0.16 * sin(2 * pi * step / 16))
        for step in range(17)
    )
    return Polygon(points, width=width, closed=False)


def struck_eye(x: float, y: float, size: float) -> list[Shape]:
    """An eye with a line through it, of `size` [mm] about a centre: not by eye."""
    from math import pi, sin

    r, width = size / 2, size / 16
    upper = [(x - r + 2 * r * s / 14, y - r * 0.55 * sin(pi * s / 14)) for s in range(15)]
    lower = [(px, 2 * y - py) for px, py in reversed(upper)]
    return [
        Polygon((*upper, *lower), width=width),
        Circle(x, y, r * 0.28, fill="ink", width=width),
        Line(x - r * 0.8, y + r * 0.8, x + r * 0.8, y - r * 0.8, "paper", width * 3),
        Line(x - r * 0.8, y + r * 0.8, x + r * 0.8, y - r * 0.8, "ink", width * 1.3),
    ]
