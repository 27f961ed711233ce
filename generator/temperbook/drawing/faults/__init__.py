"""The faults of the metal, drawn: each with what one sees of it, by the name of its picture."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType

from temperbook.drawing.faults import (
    annealing,
    forging_rolling,
    melt,
    melt_grain,
    more_rolling,
    pouring,
    stock,
    wire,
)
from temperbook.drawing.shapes import Picture

FAULTS: Mapping[str, Callable[[], Picture]] = MappingProxyType(
    {
        **pouring.PICTURES,
        **melt.PICTURES,
        **melt_grain.PICTURES,
        **forging_rolling.PICTURES,
        **more_rolling.PICTURES,
        **annealing.PICTURES,
        **wire.PICTURES,
        **stock.PICTURES,
    }
)
