"""The marks of a drawn route: the anneal in the colour of its heat, the floor, provenance."""

from __future__ import annotations

from collections.abc import Callable

from temperbook.drawing import lettering, marks, text_flow
from temperbook.drawing.draughting import CAP, LEADING, label, ring
from temperbook.drawing.shapes import HAIRLINE, LINE, Circle, Line, Polygon, Shape
from temperbook.views.route_anneal import AnnealShown

Colour = Callable[[float], str]
FIRE, SIGN = 4.5, 8.0  # radius of the anneal's mark, size of the cooling's sign [mm]
HIGH = 13.0  # of the marks' row


def anneal(
    said: AnnealShown, columns: tuple[float, float, float], colour: Colour, y: float
) -> tuple[list[Shape], float]:
    """An anneal between two runs, from y [mm] down. columns: middle of the marks, ends of the
    words [mm]."""
    middle, left, right = columns
    cy = y + HIGH / 2 - 1.0
    shapes: list[Shape] = [
        Line(middle - 15, y - 2.0, right, y - 2.0, "hairline", HAIRLINE),
        *_fire(said, middle - 7.0, cy, colour),
        *marks.cooling(said.rule, middle + 7.0, cy, SIGN),
    ]
    base = y + 3.0
    head = f"Anneal: {said.heat.text}" if said.low is not None else "Anneal by eye"
    shapes += [label(left, base, head, bold=True), *beside(said.heat.mark, left, head, base, 700)]
    for text in text_flow.lines(words(said), CAP, right - left):
        base += LEADING
        shapes.append(label(left, base, text))
    bottom = max(base, y + HIGH - 2.0) + 3.0
    shapes.append(Line(middle - 15, bottom, right, bottom, "hairline", HAIRLINE))
    return shapes, bottom + 5.0


def words(said: AnnealShown) -> str:
    """What is done at an anneal besides its heat, in a line."""
    found = [said.colour or said.heat.text]
    if said.hold:
        found.append(f"hold {said.hold.text}")
    found.append(f"{said.quench.text[0].lower()}{said.quench.text[1:]}")
    return "; ".join(found)


def told(said: AnnealShown) -> str:
    """The whole anneal for an alternative text."""
    return f"{said.heat.text}; {words(said)}" if said.colour else words(said)


def _fire(said: AnnealShown, x: float, y: float, colour: Colour) -> list[Shape]:
    """A disc in the colour of the middle of the heats; an empty ring where none is published."""
    if said.low is None or said.high is None:
        return [ring(x, y, FIRE)]
    return [Circle(x, y, FIRE, colour((said.low + said.high) / 2), "ink", LINE)]


def floor(x: float, y: float) -> Polygon:
    """A small head that points up at a floor, its tip at a place [mm]."""
    return Polygon(((x, y), (x - 0.9, y + 1.7), (x + 0.9, y + 1.7)), "ink", "", HAIRLINE)


def beside(kind: str, left: float, text: str, base: float, weight: int = 400) -> list[Shape]:
    """A provenance mark behind a text on a baseline [mm], raised as on the charts."""
    x = left + lettering.width(text, CAP, weight) + 1.6
    return marks.provenance(kind, x, base - CAP + 0.7, 1.5)
