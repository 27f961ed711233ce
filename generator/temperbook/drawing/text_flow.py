"""Breaks text into lines that fit a width in the project's own type."""

from __future__ import annotations

from temperbook.drawing import lettering
from temperbook.drawing.shapes import Shape, Text


def lines(text: str, cap: float, most: float, weight: int = 400) -> list[str]:
    """The text in lines no wider than `most` [mm] at a capital height of `cap` [mm]."""
    found: list[str] = []
    current = ""
    for word in text.split():
        longer = f"{current} {word}" if current else word
        if current and lettering.width(longer, cap, weight) > most:
            found.append(current)
            current = word
        else:
            current = longer
    return [*found, current] if current else found


def paragraph(text: str, x: float, y: float, cap: float, most: float, pitch: float) -> list[Shape]:
    """Lines of text [mm] from a first baseline at y downwards."""
    return [
        Text(x, y + n * pitch, line, cap, most=most)
        for n, line in enumerate(lines(text, cap, most))
    ]
