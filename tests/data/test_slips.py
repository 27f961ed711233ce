"""Slips put into figures and rows on purpose are caught: the short form of `tests.data.spoiling`.

The long form (a thousand slips) is run by hand; DEVELOPERS.md says what it found and which classes
of slips escape.
"""

from __future__ import annotations

from collections import Counter

from temperbook.records.load import Library
from tests.data import spoiling

SLIPS, SEED, SHARE = 60, 7, 0.95


def test_sound_records_are_not_caught(library: Library) -> None:
    """Else every slip would seem to be found."""
    assert not spoiling.caught_by_check(library)
    assert spoiling.caught_by_tests(library) == ""


def test_slips_are_of_every_kind_and_change_the_records(library: Library) -> None:
    made = list(spoiling.slips(library, 20, SEED))
    kinds = Counter((slip.kind, slip.side) for slip in made)
    assert kinds == {(k, s): 2 for k in spoiling.KINDS for s in ("figure", "row")}
    assert all(slip.library is not library for slip in made)
    assert not spoiling.caught_by_check(library), "the library itself is left as it was"


def test_nearly_all_slips_are_caught(library: Library) -> None:
    caught, escaped = spoiling.counted(library, SLIPS, SEED)
    assert sum(caught.values()) + len(escaped) == SLIPS
    assert caught["check"] > 0.8 * SLIPS
    assert len(escaped) <= (1 - SHARE) * SLIPS, [(s.kind, s.side, s.place) for s in escaped]
