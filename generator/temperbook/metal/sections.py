"""Sections of stock: round, square and flat, with their sizes in millimetres."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass
from typing import Literal

Shape = Literal["round", "square", "flat"]

_FORM = re.compile(
    r"(round|square)\s+(\d+(?:\.\d+)?)|flat\s+(\d+(?:\.\d+)?)\s*x\s*(\d+(?:\.\d+)?)", re.ASCII
)


# A half is rounded up even where dust has taken a bit of it, here and in the browser alike.
NUDGE = 1 + 1e-12


@dataclass(frozen=True)
class Section:
    """A section: `width` and `thickness` [mm]; both are the diameter of a round, the side of a
    square."""

    shape: Shape
    width: float
    thickness: float

    @property
    def area(self) -> float:
        """Area [mm2]."""
        square = self.width * self.thickness
        return square * math.pi / 4 if self.shape == "round" else square

    @property
    def text(self) -> str:
        """`round 1.0`, `square 6.0`, `flat 20.0x1.5`: the form in which it is typed."""
        if self.shape == "flat":
            return f"flat {_size(self.width)}x{_size(self.thickness)}"
        return f"{self.shape} {_size(self.thickness)}"


def parse(text: str) -> Section:
    """The section that a text such as `round 1.0`, `square 6` or `flat 20x1.5` [mm] names.

    Errors: ValueError for another form, or a size that is not above zero.
    """
    match = _FORM.fullmatch(text.strip())
    if not match:
        raise ValueError(f"`{text}` is no section; write `round 1.0`, `square 6` or `flat 20x1.5`")
    if match[1]:
        shape: Shape = "round" if match[1] == "round" else "square"
        width = thickness = float(match[2])
    else:
        shape, width, thickness = "flat", float(match[3]), float(match[4])
    if min(width, thickness) <= 0:
        raise ValueError(f"`{text}` has a size of zero")
    return Section(shape, width, thickness)


def _size(value: float) -> str:
    text = f"{value * NUDGE:.3f}".rstrip("0")
    return text + "0" if text.endswith(".") else text
