"""Pictures of forging, grooved rolls, and bends."""

from __future__ import annotations

from temperbook.drawing.draughting import WIDE, arc, arrow, curved_arrow, label, leader, titled
from temperbook.drawing.pen import disc, drawn, outline
from temperbook.drawing.shapes import HAIRLINE, LINE, Circle, Line, Picture, Polygon, Rect, Shape


def groove_order() -> Picture:
    """Four passes through ever smaller grooves, a marked corner turned a quarter each time."""
    shapes: list[Shape] = []
    for n, half in enumerate((10.0, 8.6, 7.4, 6.4)):
        x, y = 16.0 + 29.2 * n, 25.0
        shapes += _grooved(x, y, half)
        spots = ((x, y - half + 2.4), (x + half - 2.4, y), (x, y + half - 2.4), (x - half + 2.4, y))
        square = ((x, y - half), (x + half, y), (x, y + half), (x - half, y))
        shapes.append(Polygon(square, "hairline", "ink", LINE))
        shapes.append(disc(*spots[n], 1.1, "ember"))
        if n:
            shapes += curved_arrow(x, y, half * 0.5, 90 * n - 175, 90 * n - 95)
        shapes.append(label(x, 52, f"pass {n + 1}", anchor="middle", bold=True))
    shapes.append(label(16, 57, "as it comes", anchor="middle", role="ash"))
    for n in (1, 2, 3):
        shapes.append(label(16 + 29.2 * n, 57, "quarter turn", anchor="middle", role="ash"))
    shapes.append(label(4, 65, "The dot is one corner of the bar. Each groove is smaller."))
    return Picture(
        WIDE,
        69,
        tuple(shapes),
        "A square bar on its point in four grooves between two rolls, seen from its end. Each "
        "groove is smaller than the one before. A dot marks one corner: from pass to pass it "
        "moves from the top to the right, the foot and the left, because the bar is given a "
        "quarter turn before each pass.",
    )


def _grooved(x: float, y: float, half: float) -> list[Shape]:
    """The two rolls about a groove [mm]."""
    found: list[Shape] = []
    for way in (-1.0, 1.0):
        near, far = y + way * 0.5, y + way * 17
        points = (
            *((x - 13.2, near), (x - half, near), (x, near + way * half), (x + half, near)),
            *((x + 13.2, near), (x + 13.2, far), (x - 13.2, far)),
        )
        found.append(Polygon(points, "ash", "ink", LINE))
    return found


def pass_light_heavy() -> Picture:
    """A bar's end after light blows and after heavy ones; worked metal is toned."""
    top, low = 30.0, 50.0
    light = f"M 18 {top} L 42 {top} C 41.6 34 38 36 38 40 C 38 44 41.6 46 42 {low} L 18 {low} "
    light += f"C 18.4 46 22 44 22 40 C 22 36 18.4 34 18 {top}"
    heavy = f"M 80 {top} L 100 {top} C 104 34 105 46 100 {low} L 80 {low} C 75 46 76 34 80 {top}"
    shapes: list[Shape] = [
        Polygon(outline(light), "paper", "ink", LINE),
        drawn(f"M 18 {top} L 42 {top} L 40.4 34 L 19.6 34 L 18 {top}", LINE, fill="hairline"),
        drawn(f"M 18 {low} L 42 {low} L 40.4 46 L 19.6 46 L 18 {low}", LINE, fill="hairline"),
        drawn("M 30 36.4 L 29 38.6 L 31 40.6 L 29.4 43.4", 0.8, "ember"),
        Polygon(outline(heavy), "hairline", "ink", LINE),
        *leader(((30, 40), (47, 40)), "pulled"),
        label(48.2, 45.6, "apart"),
    ]
    for x, small in ((30.0, True), (90.0, False)):
        half, high = (4.0, 6.0) if small else (9.0, 13.0)
        shapes.append(Rect(x - 18, low, 36, 4, "ash", "ink"))
        shapes.append(Rect(x - half, 22 - high, 2 * half, high, "ash", "ink"))
        shapes += arrow(x, 23, x, 29.4, "ink", HAIRLINE if small else 0.8)
    shapes += arrow(84, 40, 72.4, 40) + arrow(96, 40, 107.6, 40)
    shapes += titled(30, low + 11, "light blows", "the skin spreads, the middle stays")
    shapes += titled(90, low + 11, "heavy blows", "worked to the middle, sides bulge")
    return Picture(
        WIDE,
        low + 20,
        tuple(shapes),
        "Two bars on an anvil, seen from the end; worked metal is toned. Under light blows of a "
        "small hammer only a skin above and below is worked and spreads, the sides become hollow, "
        "and the unworked middle is pulled and may split. Under heavy blows of a large hammer the "
        "whole thickness is worked and the sides bulge.",
    )


def fibre_and_bend() -> Picture:
    """Two bent strips: lines of the rolling over the bend, and along it."""
    shapes: list[Shape] = []
    for x, across in ((14.0, True), (72.0, False)):
        y = 46.0
        base = f"M {x} {y} L {x + 26} {y} L {x + 37} {y - 9} L {x + 11} {y - 9} L {x} {y}"
        wall = f"M {x} {y} L {x + 11} {y - 9} L {x + 11} {y - 31} L {x} {y - 22} L {x} {y}"
        shapes.append(drawn(base, LINE, fill="paper"))
        shapes.append(drawn(wall, LINE, fill="hairline"))
        for n in range(1, 6):
            s = n / 6
            if across:
                px, py = x + 11 * s, y - 9 * s
                shapes += [
                    Line(px, py, px + 26, py, "ink", HAIRLINE),
                    Line(px, py, px, py - 22, "ink", HAIRLINE),
                ]
            else:
                shapes += [
                    Line(x + 26 * s, y, x + 26 * s + 11, y - 9, "ink", HAIRLINE),
                    Line(x, y - 22 * s, x + 11, y - 9 - 22 * s, "ink", HAIRLINE),
                ]
        if not across:
            crack = (
                f"M {x} {y} L {x + 2.6} {y - 3.4} L {x + 4.6} {y - 2.8} L {x + 6.4} {y - 6.2} "
                f"L {x + 8.6} {y - 6.0} L {x + 11} {y - 9}"
            )
            shapes.append(drawn(crack, 0.8, "ember"))
    shapes += arrow(24, 51, 40, 51, "ash", both=True)
    shapes += arrow(102, 49, 111, 41.6, "ash", both=True)
    shapes += leader(((72 + 6.4, 39.8), (90, 26)), "it cracks here")
    shapes += titled(32, 59, "bent across the rolling", "the fibres run over the bend")
    shapes += titled(90, 59, "bent along the rolling", "the bend parts the fibres")
    return Picture(
        WIDE,
        67,
        tuple(shapes),
        "Two strips bent to a right angle; thin lines and a grey arrow show which way the metal "
        "was rolled. On the left the lines run over the bend, and the bend is whole. On the right "
        "they run along it, and a crack opens in the bend between the fibres.",
    )


def ring_spring_back() -> Picture:
    """A strip held round a mandrel, and the wider open ring that it is when let go."""
    y, r = 26.0, 13.0
    shapes: list[Shape] = []
    for x, held in ((30.0, True), (90.0, False)):
        shapes.append(Circle(x, y, r, "ash" if held else "", "ink" if held else "", LINE))
        wide, gap = (r + 0.2, 4.0) if held else (r + 1.8, 19.0)
        outer = arc(x, y, wide + 2.4, -90 + gap, 270 - gap, 48)
        inner = arc(x, y, wide, 270 - gap, -90 + gap, 48)
        shapes.append(Polygon((*outer, *inner), "hairline", "ink", LINE))
    dashed = arc(90, y, r, 0, 360, 60)[:-1]
    shapes.append(Polygon(dashed, "", "ash", LINE, dash=True))
    shapes += arrow(87.6, 10.6, 84.6, 8.4, "ember") + arrow(92.4, 10.6, 95.4, 8.4, "ember")
    shapes.append(label(30, 27.2, "mandrel", anchor="middle", role="paper"))
    shapes.append(label(90, 27.2, "as it was", anchor="middle", role="ash"))
    shapes += arrow(52, y, 68, y)
    shapes.append(label(60, 23.4, "let go", anchor="middle"))
    shapes += titled(30, 51, "held to the mandrel", "the ends meet")
    shapes += titled(90, 51, "it springs back", "wider, and the joint gapes")
    shapes.append(label(4, 66, "Bend it round a smaller mandrel than the ring, the harder the"))
    shapes.append(label(4, 70.4, "metal the smaller."))
    return Picture(
        WIDE,
        74,
        tuple(shapes),
        "On the left a strip is held tight round a mandrel until its ends meet. On the right it "
        "was let go: it springs back to a wider circle than the mandrel, which is dashed, and its "
        "ends part. The ring is therefore bent round a smaller mandrel, the harder the metal the "
        "smaller.",
    )
