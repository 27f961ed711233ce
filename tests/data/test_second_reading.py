"""The numbers behind adopted figures, typed a second time by someone who did not see data/.

Where the two typings differ in unit alone, both are converted; a difference of rounding is allowed,
a difference of number is not. `SETTLED` lists the rows whose difference was looked at, and why it
stands.
"""

from __future__ import annotations

import csv
from pathlib import Path

from temperbook import units
from temperbook.records import printed
from temperbook.records.load import Library

ROWS = Path(__file__).parent / "second_reading" / "rows.csv"
IN_THE_SOURCE = ROWS.with_name("in_the_source.csv")

# Row id -> why the two typings may differ. Sorted; an entry that is no longer needed fails.
SETTLED: dict[str, str] = {
    "callister-8.11": "some alloys: as high as 0.7; the other kept the number",
    "cuni18zn19pb1-sheet.12": "room temperature or 60 degC: at most 60; the other kept the number",
    "fisk-c36000.2": "890 degC stands beside 1630 degF, which is 888 degC",
    "foundry-pewter.1": "not much above 400 degC: at most; the other kept the number",
    "great-soviet-gold-alloys.1": "425-450 is printed; the second reader kept the upper end",
    "hansen-2007.3": "recovery alone below about 200 degC: above it; the other kept the number",
    "iupac-atomic-weights-2013.23": "the conventional value of the interval that the other typed",
    "iupac-atomic-weights-2013.29": "the conventional value of the interval that the other typed",
    "mcb-bronze.1": "cold workable up to about 8 percent: at most; the other kept the number",
    "orchid-germanium-tarnish.3": "300 degC stands beside 580 degF, which is 304 degC",
    "patent-in-258455.3": "890 degC stands there with 1640 degF beside it, which is 893 degC",
    "pmr-50-15.2": "recrystallised at 800 degC: at most 800; the other kept the number",
    "pmr-50-15.5": "recrystallised at 800 degC: at most 800; the other kept the number",
    "stainless-cold-working.18": "strength falls above 425 degC; the other kept the number",
    "three-net-white-750.9": "one phase above 660 degC; the other kept the number",
    "tin-in-sterling-abstract.2": "cracks above 1 percent; the other kept the number",
    "wusatowski-rolling.1": "the factor with its sign; the other left the minus to the formula",
}


# Rows that the second reader looked for, in vain: they rest on one typing. May only shrink.
NOT_FOUND_AGAIN = [
    "cable-supplier-awg.1",
    "cable-supplier-awg.2",
    "cable-supplier-awg.3",
    "incropera-a1.10",
    "incropera-a1.11",
    "incropera-a1.12",
    "incropera-a1.8",
    "jewelryscience-silver.1",
    "midgett-mokume.2",
    "orchid-mokume-questions.1",
    "pass-design-wusatowski.1",
    "pass-design-wusatowski.2",
    "titanium-properties.1",
]


def typed_in_the_source() -> set[str]:
    """Rows whose number was typed again in the source itself: see test_in_the_source.py."""
    with IN_THE_SOURCE.open(encoding="utf-8", newline="") as stream:
        return {row["id"] for row in csv.DictReader(stream) if row["read_low"] or row["read_high"]}


def second_reading() -> dict[str, dict[str, str]]:
    with ROWS.open(encoding="utf-8", newline="") as stream:
        return {row["id"]: row for row in csv.DictReader(stream)}


def ends(row: dict[str, str]) -> tuple[float | None, float | None]:
    low, high = row["read_low"], row["read_high"]
    return float(low) if low else None, float(high) if high else None


def differs(library: Library, row_id: str, read: dict[str, str]) -> str:
    """What differs between the two typings of a row; empty where they agree."""
    first = library.evidence[row_id]
    value = printed.parse(first.printed_value)
    assert value is not None
    quantity = library.vocabulary.quantities[first.quantity]
    unit = quantity.unit
    if read["read_unit"] not in units.PINT_NAMES:
        return f"unit {read['read_unit']}"
    same_unit = read["read_unit"] == first.printed_unit
    for mine, theirs in zip(value.ends, ends(read), strict=True):
        if (mine is None) != (theirs is None):
            if quantity.one_number or value.low == value.high:
                continue
            return f"{first.printed_value} against {ends(read)}"
        if mine is None or theirs is None:
            continue
        a = units.convert(mine, first.printed_unit, unit)
        b = units.convert(theirs, read["read_unit"], unit)
        slack = 1e-9 if same_unit else max(0.6, 0.002 * abs(a))
        if abs(a - b) > slack * max(1.0, abs(a) if same_unit else 1.0):
            return f"{first.printed_value} {first.printed_unit} against {ends(read)}"
    return ""


def test_rows_read_twice_agree(library: Library) -> None:
    read = second_reading()
    known = {i: row for i, row in read.items() if i in library.evidence}
    found = {i: d for i, row in known.items() if (d := differs(library, i, row))}
    unsettled = {i: d for i, d in found.items() if i not in SETTLED}
    assert not unsettled, "\n".join(f"{i}: {d}" for i, d in sorted(unsettled.items()))
    assert sorted(SETTLED) == list(SETTLED)
    assert not [i for i in SETTLED if i not in found], "settled differences that no longer differ"


def test_every_row_behind_an_adopted_figure_was_read_twice(library: Library) -> None:
    """Every numeric row, save those that the second reader could not find again."""
    behind = {i for *_, figure in library.placed_figures() for i in figure.from_}
    numeric = {
        i
        for i in behind
        if library.vocabulary.quantities[library.evidence[i].quantity].numeric
        and printed.parse(library.evidence[i].printed_value)
    }
    assert len(numeric) > 3000
    once = numeric - set(second_reading()) - typed_in_the_source()
    assert sorted(once) == NOT_FOUND_AGAIN


def test_the_second_reading_is_whole() -> None:
    rows = second_reading()
    assert len(rows) >= 3000
    assert not [i for i, row in rows.items() if ends(row) == (None, None)]
