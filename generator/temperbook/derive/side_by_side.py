"""Readings of one quantity side by side, in the handbook's unit: how far do sources lie apart?"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from temperbook import units
from temperbook.records import printed
from temperbook.records.evidence import Evidence
from temperbook.records.vocabulary import Vocabulary

# Readings are comparable only where all of this agrees; the process is told apart by its own
# limits.
SAME = ("quantity", "element", "of", "state", "stage", "reduction", "name")


@dataclass(frozen=True)
class Spread:
    """Readings of one quantity on one basis: how many, from how many sources, lowest and highest
    [unit]."""

    quantity: str
    example: Evidence
    readings: int
    sources: int
    low: float
    high: float


def spreads(rows: Sequence[Evidence], words: Vocabulary) -> list[Spread]:
    """Quantities with readings from two sources or more, in the order of the vocabulary.

    rows: evidence about one record. Readings of different basis are never put together, and
    nothing is averaged.
    """
    import pandas as pd

    read = [converted for row in rows if (converted := _converted(row, words))]
    if not read:
        return []
    frame = pd.DataFrame(read)
    found: list[Spread] = []
    for _, group in frame.groupby([f"key_{key}" for key in SAME], sort=False):
        if group["source"].nunique() < 2:
            continue
        first = group.iloc[0]
        found.append(
            Spread(
                first["key_quantity"],
                first["row"],
                len(group),
                int(group["source"].nunique()),
                float(group["low"].min()),
                float(group["high"].max()),
            )
        )
    order = list(words.quantities)
    return sorted(found, key=lambda spread: order.index(spread.quantity))


def _converted(row: Evidence, words: Vocabulary) -> dict[str, object] | None:
    known, value = words.quantities[row.quantity], printed.parse(row.printed_value)
    if not known.numeric or value is None:
        return None
    ends = [end for end in value.ends if end is not None]
    keys = {f"key_{key}": getattr(row, key) for key in SAME}
    return {
        **keys,
        "row": row,
        "source": row.source,
        "low": units.convert(min(ends), row.printed_unit, known.unit),
        "high": units.convert(max(ends), row.printed_unit, known.unit),
    }
