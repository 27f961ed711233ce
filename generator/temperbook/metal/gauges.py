"""Wire gauges: the size of a number, and the number nearest to a size."""

from __future__ import annotations

import re
from collections.abc import Mapping

INCH = 25.4  # mm, exact

_NOUGHTS = re.compile(r"0{2,}")


def normal(number: str) -> str:
    """A gauge number as the tables write it: `2/0` for `00`, `0` for `1/0`, `7` for `07`.

    Example: normal("0000") -> 4/0
    """
    text = number.replace(" ", "")
    if _NOUGHTS.fullmatch(text):
        return f"{len(text)}/0"
    if text == "1/0":
        return "0"
    return text.lstrip("0") or "0"


def size(number: str, table: Mapping[str, float]) -> float:
    """Size [mm] of a gauge number. table: sizes [mm] by number. Errors: ValueError for none.

    Valid for: the numbers of the table; nothing is computed beyond it.
    """
    wanted = normal(number)
    if wanted not in table:
        least, most = min(table, key=table.__getitem__), max(table, key=table.__getitem__)
        raise ValueError(f"the table has no number `{number}`; it goes from {most} to {least}")
    return table[wanted]


def nearest(millimetres: float, table: Mapping[str, float]) -> str:
    """The number whose size is nearest to a size [mm]; of two as near the larger.

    table: sizes [mm] by number. Valid for: sizes above zero. Errors: ValueError for others.
    """
    if not millimetres > 0:
        raise ValueError("mm must be above zero")
    return min(table, key=lambda number: (abs(table[number] - millimetres), -table[number]))


def beyond(millimetres: float, table: Mapping[str, float]) -> bool:
    """Whether a size [mm] lies outside the table's own sizes [mm]."""
    return not min(table.values()) <= millimetres <= max(table.values())
