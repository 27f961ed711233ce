"""What the drawn pictures need to know of the handbook."""

from __future__ import annotations

from temperbook.derive import colour_names
from temperbook.derive.handbook import Handbook
from temperbook.drawing.pictures import PictureFacts


def of(handbook: Handbook) -> PictureFacts:
    """Heat colours and the observers' names, from the data."""
    observers = tuple(
        (name, tuple((n.text, n.low, n.high) for n in names))
        for name, names in colour_names.observers(handbook.library)
    )
    return PictureFacts(glow_colour=handbook.glow.colour, observers=observers)
