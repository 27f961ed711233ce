"""Rows of evidence behind adopted figures, read again in the sources themselves.

The rows were first typed from tables of facts, which are copies. Here each was looked up in the
work, the maker's sheet or the page, typed before the row was looked at, and compared. `opened` is
the address as it was shown. Where the two differed the row was put right, so that what was read
and what stands in data/evidence are the same; the verdict and `found` keep what was changed.
"""

from __future__ import annotations

import csv
from dataclasses import replace
from pathlib import Path

import pytest

from temperbook import units
from temperbook.records import printed
from temperbook.records.evidence import Evidence
from temperbook.records.load import Library
from temperbook.records.models import RULES

ROWS = Path(__file__).parent / "second_reading" / "in_the_source.csv"
VERDICTS = {"agrees", "differs", "basis-differs", "not-in-it", "unclear"}
# A word of the cooling rules, and what the reader's sentence must say for it.
SIGNS = {
    "water": ("water", "quenched"),
    "water-after-glow": ("glow", "let the red go"),
    "air": ("cools in air", "cooled gradually"),
    "slow": ("cool slowly", "cool gradually"),
    "alcohol": ("alcohol",),
    "either": ("may be cooled rapidly", "or cool in air"),
}
Ends = tuple[float | None, float | None]


def readings() -> list[dict[str, str]]:
    with ROWS.open(encoding="utf-8", newline="") as stream:
        return list(csv.DictReader(stream))


def source_of(row_id: str) -> str:
    return row_id.rsplit(".", 1)[0]


def behind_something_adopted(library: Library) -> set[str]:
    """Ids of the rows on which a figure or a rule of the handbook rests."""
    ids = {i for *_, figure in library.placed_figures() for i in figure.from_}
    rules = (getattr(alloy, key) for alloy in library.alloys.values() for key in RULES)
    return ids | {i for rule in rules if rule for i in rule.from_}


def ends(read: dict[str, str]) -> Ends:
    low, high = read["read_low"], read["read_high"]
    return float(low) if low else None, float(high) if high else None


def numbers(pair: Ends, unit: str, to: str) -> list[float]:
    return sorted({units.convert(end, unit, to) for end in pair if end is not None})


def what_differs(first: Evidence, read: dict[str, str]) -> str:
    """What differs between the row and the reading; empty where they agree.

    A bound and the bare number that it bounds agree; bounds of opposite sides do not.
    """
    if first.word:
        signs = SIGNS[first.word]
        said = any(sign in read["found"].lower() for sign in signs)
        return "" if said else f"{first.word} against `{read['found']}`"
    value = printed.parse(first.printed_value)
    if value is None:
        return f"no number in {first.printed_value}"
    mine, theirs = value.ends, ends(read)
    slack = 1e-9 if read["read_unit"] == first.printed_unit else 0.002
    a = numbers(mine, first.printed_unit, first.printed_unit)
    b = numbers(theirs, read["read_unit"], first.printed_unit)
    same = len(a) == len(b) and b == pytest.approx(a, rel=slack)
    opposite = None in mine and None in theirs and mine.index(None) != theirs.index(None)
    return "" if same and not opposite else f"{first.printed_value} against {theirs}"


def test_enough_rows_were_read_in_enough_sources(library: Library) -> None:
    rows = readings()
    ids = [row["id"] for row in rows]
    assert len(ids) == len(set(ids))
    assert len(ids) >= 60
    assert len({source_of(i) for i in ids}) >= 25
    agencies = {"agency", "law", "standard", "association", "paper", "patent"}
    kinds = {source_of(i): library.sources[source_of(i)].kind for i in ids}
    assert sum(kind in agencies for kind in kinds.values()) >= 20


def test_every_row_stands_behind_something_adopted(library: Library) -> None:
    ids = {row["id"] for row in readings()}
    assert not ids - library.evidence.keys()
    assert not ids - behind_something_adopted(library)


def test_what_was_read_is_what_the_row_says_now(library: Library) -> None:
    found = {row["id"]: what_differs(library.evidence[row["id"]], row) for row in readings()}
    left = {i: text for i, text in found.items() if text}
    assert not left, "\n".join(f"{i}: {text}" for i, text in sorted(left.items()))


def test_readings_are_whole() -> None:
    for row in readings():
        assert row["verdict"] in VERDICTS - {"not-in-it"}, row["id"]
        assert row["opened"].startswith("http"), row["id"]
        assert len(row["found"]) >= 15, row["id"]
        typed = row["read_low"] or row["read_high"]
        assert bool(typed) == (row["read_unit"] in units.PINT_NAMES), row["id"]


def test_no_agreement_is_claimed_on_another_basis(library: Library) -> None:
    """The basis that a reader would notice: percent of what, read in the sentence typed."""
    for row in readings():
        first = library.evidence[row["id"]]
        text = row["found"].lower()
        if first.quantity.startswith("reduction-") and "thickness" in text:
            assert first.of == "thickness", row["id"]
        if first.quantity.startswith("reduction-") and "cross-section" in text:
            assert first.of == "area", row["id"]


@pytest.mark.parametrize(
    ("printed_value", "unit", "low", "high", "read_unit"),
    [
        ("600-650", "degC", "600", "640", "degC"),
        ("<=70", "percent", "70", "", "percent"),
        ("70", "percent", "7", "7", "percent"),
        ("1250", "degF", "1250", "1250", "degC"),
    ],
)
def test_a_wrong_number_is_noticed(
    library: Library, printed_value: str, unit: str, low: str, high: str, read_unit: str
) -> None:
    first = library.evidence["welz-585.15"]
    wrong = replace(first, printed_value=printed_value, printed_unit=unit)
    assert what_differs(
        wrong, {"read_low": low, "read_high": high, "read_unit": read_unit, "found": ""}
    )


def test_a_wrong_rule_is_noticed(library: Library) -> None:
    air = library.evidence["lacy-nickel-white.3"]
    assert air.word == "air"
    assert what_differs(air, {"found": "then quenched in water"})
