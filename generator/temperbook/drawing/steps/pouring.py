"""Pictures of the mould, the stream, and the ingot made ready for work."""

from __future__ import annotations

from temperbook.drawing.draughting import LEADING, WIDE, arrow, label, leader, pointer, titled
from temperbook.drawing.pen import disc, drawn, filled, placed
from temperbook.drawing.shapes import LINE, Line, Picture, Polygon, Rect, Shape
from temperbook.drawing.signs.symbols import drop, flame

WALL, HOLLOW, DEEP, FLOOR = 5.0, 12.0, 28.0, 5.0  # of a drawn mould [mm]


def _mould(x: float, top: float) -> list[Shape]:
    """A mould in section about a middle, its mouth at `top` [mm]."""
    half, out, foot = HOLLOW / 2, HOLLOW / 2 + WALL, top + DEEP
    points = (
        *((x - out, top), (x - half, top), (x - half, foot), (x + half, foot)),
        *((x + half, top), (x + out, top), (x + out, foot + FLOOR), (x - out, foot + FLOOR)),
    )
    return [Polygon(points, "ash", "ink", LINE)]


def mould_warm_dry() -> Picture:
    """A damp mould that steams over a flame, and the same mould dry."""
    top = 17.0
    foot = top + DEEP + FLOOR
    shapes: list[Shape] = []
    for x, damp in ((30.0, True), (90.0, False)):
        shapes += _mould(x, top)
        for side in (-9.0, 0.0, 9.0):
            shapes += placed(flame("ember"), x + side, foot + 5.6, 0.44)
        if damp:
            for across in (-3.6, 0.0, 3.6):
                at = x + across
                wave = f"M {at} 19 C {at - 4} 14 {at + 4} 10 {at} 5"
                shapes.append(drawn(wave, LINE))
            for across, down in ((-4.6, 8.0), (4.6, 12.0), (-4.6, 17.0), (4.6, 21.0)):
                shapes.append(drop(x + across, top + down, "ink", 0.8))
    shapes += leader(((30 + 3.6, 11), (45, 11)), "mist")
    shapes += leader(((30 + 8.5, top + 12), (46, top + 8)), "water in")
    shapes.append(label(47.2, top + 9.2 + LEADING, "the pores"))
    shapes += titled(30, foot + 16.5, "not yet", "mist rises from the mouth")
    shapes += titled(90, foot + 16.5, "dry", "warm through, nothing rises")
    return Picture(
        WIDE,
        foot + 25,
        tuple(shapes),
        "An iron mould in section, twice, warmed from below by small flames. On the left mist "
        "rises from its mouth and drops sit on its walls: it is not yet dry, and metal must not be "
        "poured. On the right nothing rises any more: the mould is warm right through and dry.",
    )


def pour_stream() -> Picture:
    """A narrow whole stream into a mould, and a broken one."""
    top = 34.0
    foot = top + DEEP + FLOOR
    shapes: list[Shape] = []
    for x, whole in ((30.0, True), (90.0, False)):
        shapes += _mould(x, top)
        shapes += _crucible(x)
        pool = top + (14.0 if whole else 20.0)
        half = HOLLOW / 2 - 0.2
        shapes.append(Rect(x - half, pool, 2 * half, top + DEEP - pool - 0.2, "ember"))
        if whole:
            shapes.append(Rect(x - 0.8, 18, 1.6, pool - 18, "ember"))
            continue
        for across, down, size in (
            *((-0.4, 21.0, 1.0), (1.2, 26.0, 0.8), (-1.0, 30.5, 0.9), (3.6, 32.0, 0.6)),
            *((-3.8, 36.0, 0.6), (1.0, 37.5, 0.9), (-1.4, 43.0, 0.9), (2.6, 48.0, 0.8)),
        ):
            shapes.append(drop(x + across, down, "ember", size))
        for across, down in ((5.2, 41.0), (-5.2, 46.0), (5.2, 49.0)):
            shapes.append(disc(x + across, down, 0.8, "ember"))
        shapes += leader(((x + 5.2, 41.0), (x + 14, 41.0)), "shot")
    shapes += titled(30, foot + 7, "a whole stream", "narrow, steady, down the middle")
    shapes += titled(90, foot + 7, "a broken stream", "drops freeze apart on the walls")
    return Picture(
        WIDE,
        foot + 15,
        tuple(shapes),
        "Two crucibles pour into upright moulds. On the left one narrow stream runs unbroken down "
        "the middle, and the metal rises evenly. On the right the stream breaks into drops; some "
        "strike the walls and freeze there as shot before the metal reaches them.",
    )


def _crucible(x: float) -> list[Shape]:
    """A crucible tilted to pour at (x, 18) [mm]."""
    cup = drawn(
        f"M {x - 1} 18 L {x - 8.6} 4 L {x - 22} 11.4 C {x - 21.6} 19 {x - 16} 25 {x - 9} 24.6 "
        f"L {x - 1} 18",
        LINE,
        "ink",
        fill="ash",
    )
    melt = filled(
        f"M {x + 0.8} 18 L {x - 6} 16.6 L {x - 18.2} 16.6 C {x - 17} 20 {x - 14} 22.6 {x - 9.6} "
        f"22.4 L {x - 1.4} 18.6",
        "ember",
    )
    return [cup, melt]


def crop_line() -> Picture:
    """An ingot lying, its pipe, two cuts, and what each cut's face shows."""
    left, right, top, low = 6.0, 92.0, 14.0, 34.0
    body = (
        f"M {left} {top} L {right} {top} L {right - 1} 17 C 86 19 80 22 70 23.4 "
        f"C 80 25 86 28 {right - 1} 31 L {right} {low} L {left} {low} L {left} {top}"
    )
    shapes: list[Shape] = [
        drawn(body, LINE, "ink", fill="hairline"),
        drawn("M 66.6 23 L 68 22.6 L 68.4 24 L 67 24.4 L 66.6 23", LINE, "ink", fill="paper"),
        drawn("M 63 23.4 L 64 23 L 64.4 24 L 63.4 24.2 L 63 23.4", LINE, "ink", fill="paper"),
        Line(56, top - 4, 56, low + 4, "ember", 0.8),
        Line(80, top - 4, 80, low + 4, "ash", LINE, dash=True),
        label(56, top - 6, "cut here", anchor="middle", bold=True),
        label(80, top - 6, "too near", anchor="middle"),
        label(left + 4, 25, "sound metal"),
        *leader(((88, 24), (97, 24)), "the pipe"),
        label(right + 4, top + 2, "top, as cast", role="ash"),
    ]
    for x, hole in ((40.0, False), (88.0, True)):
        shapes.append(Rect(x - 8, 46, 16, 16, "hairline", "ink"))
        if hole:
            spot = drawn(
                f"M {x - 3} 53 L {x - 1} 51 L {x + 2} 52 L {x + 3} 55 L {x} 57 L {x - 3} 53",
                LINE,
                "ember",
                fill="paper",
            )
            shapes.append(spot)
    shapes += arrow(56, low + 5, 47, 46, "ink") + arrow(80, low + 5, 84, 45, "ink")
    shapes += titled(40, 69, "a whole face", "go on")
    shapes += titled(88, 69, "a hollow in the face", "cut again, further down")
    return Picture(
        WIDE,
        77,
        tuple(shapes),
        "An ingot lying, cut lengthwise. From the end that was its top a funnel, the pipe, runs "
        "inwards, with small closed hollows beyond its tip. A thick line shows the cut past the "
        "last hollow: its face is whole. A dashed line through the pipe is too near: its face "
        "shows a hollow, and the ingot must be cut again further down.",
    )


def scalp_faces() -> Picture:
    """An ingot aslant with its faces named, and its section with the skin that goes."""
    shapes: list[Shape] = [
        drawn("M 8 26 L 24 14 L 74 14 L 58 26 L 8 26", LINE, "ink", fill="hairline"),
        drawn("M 8 26 L 58 26 L 58 38 L 8 38 L 8 26", LINE, "ink", fill="paper"),
        drawn("M 58 26 L 74 14 L 74 26 L 58 38 L 58 26", LINE, "ink", fill="ash"),
        label(41, 21.2, "1 broad face", anchor="middle", bold=True),
        label(33, 33.2, "2 edge", anchor="middle", bold=True),
        *pointer(((68, 24), (68, 44))),
        label(66, 48.2, "end: cropped, not scalped", anchor="middle"),
        label(8, 44, "under it: 3, behind: 4"),
        Rect(87, 18, 29, 14, "hairline", "ember"),
        Rect(89.2, 20.2, 24.6, 9.6, "paper", "ink"),
        label(101.5, 26.2, "sound", anchor="middle"),
        label(101.5, 14, "from the end", anchor="middle", role="ash"),
        *pointer(((101.5, 30.9), (101.5, 38))),
        label(101.5, 41.8, "the skin", anchor="middle"),
        label(8, 57, "Take the skin off all four long faces, until no pit or fold is left."),
    ]
    return Picture(
        WIDE,
        61,
        tuple(shapes),
        "A flat ingot seen aslant, and from its end. The four long faces are numbered: the broad "
        "face on top, the edge in front, the face under it and the edge behind. From all four the "
        "thin skin is scalped, shown as a rim round the sound metal. The ends are cropped instead.",
    )
