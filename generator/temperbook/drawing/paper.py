"""Sheets of paper, and how high letters must be to be read from where a sheet hangs or lies."""

from __future__ import annotations

from dataclasses import dataclass

# Landscape, width and height [mm]: ISO 216 and ANSI Y14.1.
SIZES = {
    "a4": (297.0, 210.0),
    "a3": (420.0, 297.0),
    "a2": (594.0, 420.0),
    "letter": (279.4, 215.9),
    "tabloid": (431.8, 279.4),
}
READ_AT = {"wall": ("a3", "a2", "tabloid"), "bench": ("a4", "letter", "a3")}


@dataclass(frozen=True)
class Lettering:
    """Heights of capitals [mm] and the distance [m] from which they are read."""

    key: float
    other: float
    title: float
    note: float
    metres: int


LETTERING = {
    "wall": Lettering(key=14.0, other=10.0, title=20.0, note=3.5, metres=2),
    "bench": Lettering(key=7.0, other=5.0, title=10.0, note=3.5, metres=1),
}


def usual_reading(paper: str) -> str:
    """`wall` where the paper is large enough for it, else `bench`."""
    return "wall" if paper in READ_AT["wall"] else "bench"


def allowed(paper: str, read_at: str) -> bool:
    """Whether a sheet of this paper can be read from there."""
    return paper in READ_AT[read_at]
