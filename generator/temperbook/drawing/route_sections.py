"""Sections of stock to scale: what is there toned, what was there before dashed."""

from __future__ import annotations

from collections.abc import Sequence

from temperbook.drawing.draughting import ring
from temperbook.drawing.shapes import LINE, Circle, Point, Polygon, Rect, Shape
from temperbook.metal.sections import Section

TALL, ACROSS = 13.0, 30.0  # mm of the picture that a section may take
NARROW = 3.0  # a flat up to so many times as wide as thick is drawn whole
TEETH = 4  # of the torn edge of a flat that is too wide to be drawn whole


def scale(sections: Sequence[Section]) -> float:
    """Picture mm for each mm of these sections, so that the largest just fits."""
    thick = max(section.thickness for section in sections)
    wide = max(section.width for section in sections)
    by_thickness = TALL / thick
    return min(by_thickness, ACROSS / wide) if wide <= NARROW * thick else by_thickness


def shown(
    after: Section, before: Section | None, middle: Point, times: float, left: float
) -> list[Shape]:
    """A section about a middle [mm], with the outline of the one before; `left` [mm] is where flats
    begin."""
    found: list[Shape] = []
    if before:
        found.append(_outline(before, middle, times, left))
    return [*found, _solid(after, middle, times, left)]


def _solid(of: Section, middle: Point, times: float, left: float) -> Shape:
    if of.shape == "round":
        return Circle(*middle, of.thickness * times / 2, "hairline", "ink")
    if _cut(of, times):
        return Polygon(_torn(of, middle, times, left), "hairline", "ink", LINE)
    x, y, w, h = _box(of, middle, times)
    return Rect(x, y, w, h, "hairline", "ink")


def _outline(of: Section, middle: Point, times: float, left: float) -> Polygon:
    if of.shape == "round":
        return ring(*middle, of.thickness * times / 2)
    if _cut(of, times):
        return Polygon(_torn(of, middle, times, left), "", "ash", LINE, dash=True)
    x, y, w, h = _box(of, middle, times)
    return Polygon(((x, y), (x + w, y), (x + w, y + h), (x, y + h)), "", "ash", LINE, dash=True)


def _cut(of: Section, times: float) -> bool:
    return of.width * times > ACROSS * 1.05


def _box(of: Section, middle: Point, times: float) -> tuple[float, float, float, float]:
    w, h = of.width * times, of.thickness * times
    return middle[0] - w / 2, middle[1] - h / 2, w, h


def _torn(of: Section, middle: Point, times: float, left: float) -> tuple[Point, ...]:
    """A flat from its left edge to where it is torn off [mm]."""
    high = of.thickness * times
    top, right, deep = middle[1] - high / 2, left + ACROSS, min(1.5, high / 2)
    edge = [
        (right - deep * (step % 2), top + high * step / (2 * TEETH))
        for step in range(2 * TEETH + 1)
    ]
    return ((left, top), *edge, (left, top + high))
