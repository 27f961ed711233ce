"""A source record without a row is a claim that nothing rests on, unless its table is data of
its own."""

from __future__ import annotations

from collections.abc import Iterator

from temperbook.problems import Problem
from temperbook.records.load import Library

# Sources whose numbers stand in a table of their own: source -> file below data/.
TABLES = {"cie-1931-observer": "observers/cie-1931-2deg.csv"}


def check(library: Library) -> Iterator[Problem]:
    """Sources that no evidence row comes from."""
    used = {row.source for row in library.evidence.values()}
    for source_id in library.sources:
        if source_id in used or source_id in TABLES or library.lost(f"{source_id}.1"):
            continue
        yield library.document(source_id, "sources").problem(
            (),
            "no evidence row comes from this source",
            found=source_id,
            needed=f"rows in data/evidence/{source_id}.csv",
            mend="type what was read in it, or delete the record",
        )
