"""Picture forging-order: quarter turns on the anvil, the edges broken last, the nose tapered."""

from __future__ import annotations

from temperbook.drawing.draughting import WIDE, arrow, curved_arrow, label, titled
from temperbook.drawing.shapes import HAIRLINE, LINE, Picture, Point, Polygon, Rect, Shape

ANVIL = 32.0  # height of the anvil's face [mm]
SIDE = 14.0  # of the bar as it begins [mm]
FALL = 1.6  # taken by the blows of one face in the picture [mm]


def forging_order() -> Picture:
    """Four scenes from the bar's end, and one of its nose from the side."""
    shapes: list[Shape] = []
    wide, tall = SIDE, SIDE
    for x, title, under in (
        (18.0, "1 strike a face", "one row of blows"),
        (60.0, "2 quarter turn", "strike the next face"),
        (102.0, "3 turn and strike", "round all four, even"),
    ):
        turns = int(title[0]) - 1
        shapes += _scene(x, wide, tall, turns, title, under)
        # the struck face has come down and the metal spread to the sides; then the bar is turned
        wide, tall = tall - FALL, wide + FALL * 0.4
    low = ANVIL + 47.0
    shapes += _edges(18.0, low)
    shapes += _nose(84.0, low)
    return Picture(
        WIDE,
        low + 19,
        tuple(shapes),
        "How a bar is forged. First, second and third, seen from its end on the anvil: a face "
        "is struck, the bar is given a quarter turn so that the next face comes up, and so on "
        "round all four faces with even blows; numbers on the faces show the turning. Fourth, "
        "the bar stands on an edge, and its sharp edges are broken last, with light blows. "
        "Fifth, from the side, the nose is tapered for the rolls.",
    )


def _scene(x: float, wide: float, tall: float, turns: int, title: str, under: str) -> list[Shape]:
    """The bar from its end on the anvil under the hammer, after so many quarter turns [mm]."""
    top = ANVIL - tall
    shapes: list[Shape] = [
        *_anvil(x, ANVIL),
        Rect(x - wide / 2, top, wide, tall, "hairline", "ink"),
        *_hammer(x, top - 5.5),
        *arrow(x, top - 4.7, x, top - 0.8),
        *titled(x, ANVIL + 11, title, under),
    ]
    spots = (
        (x, top + 3.6),
        (x + wide / 2 - 2.2, top + tall / 2 + 1.2),
        (x, ANVIL - 1.4),
        (x - wide / 2 + 2.2, top + tall / 2 + 1.2),
    )
    for n, (at, base) in enumerate(spots):
        shapes.append(label(at, base, str((n + turns) % 4 + 1), anchor="middle", bold=n == 0))
    if turns:
        shapes += curved_arrow(x, ANVIL - tall / 2, SIDE * 0.92, 25, -50)
    return shapes


def _anvil(x: float, y: float, half: float = 15.0) -> list[Shape]:
    return [Rect(x - half, y, 2 * half, 3.5, "ash", "ink")]


def _hammer(x: float, y: float, half: float = 5.0, high: float = 7.0) -> list[Shape]:
    """A hammer's head whose face, a little domed, ends at y [mm]."""
    face = ((x - half, y - 0.6), (x - half * 0.4, y), (x + half * 0.4, y), (x + half, y - 0.6))
    return [Polygon((*face, (x + half, y - high), (x - half, y - high)), "ash", "ink", LINE)]


def _edges(x: float, y: float) -> list[Shape]:
    """The bar standing on an edge, its upper edge struck lightly [mm]."""
    half = 8.6
    cut = 1.3  # broken edges below and at the sides
    middle = y - half + cut
    corners: list[Point] = [
        (x, middle - half),
        (x + half - cut, middle - cut),
        (x + half - cut, middle + cut),
        (x + cut, middle + half - cut),
        (x - cut, middle + half - cut),
        (x - half + cut, middle + cut),
        (x - half + cut, middle - cut),
    ]
    return [
        *_anvil(x, y),
        Polygon(tuple(corners), "hairline", "ink", LINE),
        *_hammer(x, middle - half - 4.5, 3.4, 5.0),
        *arrow(x, middle - half - 3.9, x, middle - half - 0.6, "ink", HAIRLINE),
        *titled(x, y + 11, "4 edges last", "lightly"),
    ]


def _nose(x: float, y: float) -> list[Shape]:
    """The bar from the side, its nose tapered towards the rolls [mm]."""
    left, right, tall = x - 45, x + 13, 12.0
    bar = ((left, y - tall), (right - 20, y - tall), (right, y - tall / 2), (right, y), (left, y))
    return [
        *_anvil(x - 9, y, 32.0),
        Polygon(bar, "hairline", "ink", LINE),
        *_hammer(right - 8, y - tall - 5.5),
        *arrow(right - 8, y - tall - 4.7, right - 8, y - tall + 2.2),
        *arrow(right + 4, y - 3, right + 16, y - 3),
        *titled(x - 9, y + 11, "5 taper the nose", "so that the rolls take it"),
        label(right + 10, y - 6, "to the rolls", anchor="middle", role="ash"),
    ]
