"""Tables of carats and finenesses as printed, through `fineness` and `change-fineness`."""

from __future__ import annotations

import math
from typing import Any

import pytest

from temperbook.derive import tables
from temperbook.metal import register
from temperbook.records.load import Library
from tests.metal.published import half_a_digit, table


@pytest.fixture(scope="module")
def known(records: Library) -> dict[str, Any]:
    """The handbook's legal standards."""
    return tables.made(["finenesses"], records)


def fineness(carat: str, known: dict[str, Any]) -> float:
    found = register.compute("fineness", {"carat": carat}, known).outputs
    back = register.compute("fineness", {"fineness": found["fineness"]}, known).outputs
    assert back["carat"] == pytest.approx(float(carat))
    return float(found["fineness"])


# carat | printed share of gold, cut off after the fifth place. Source: a forum's answer with a
# conversion table of carats (topic 555).
CUT_OFF = table("""
9   | 0.37500
9.5 | 0.39583
10  | 0.41666
13  | 0.54166
14  | 0.58333
17  | 0.70833
18  | 0.75000
21  | 0.87500
22  | 0.91666
""")


@pytest.mark.parametrize("row", CUT_OFF, ids=lambda row: f"{row[0]} ct")
def test_a_table_that_cuts_off(row: list[str], known: dict[str, Any]) -> None:
    carat, printed = row
    share = fineness(carat, known) / 1000
    assert math.floor(share * 1e5 + 1e-6) / 1e5 == float(printed)
    assert 0 <= share - float(printed) < 1e-5


# carat | printed per mille. Source: A. M. Reti, Precious metals: metallurgy and related topics,
# karat table; the last row 911metallurgist-gold-copper, standards of fineness: eleven twelfths.
ROUNDED = table("""
24 | 1000
22 | 916.7
18 | 750
14 | 583.3
10 | 416.7
9  | 375
8  | 333.3
""")


@pytest.mark.parametrize("row", ROUNDED, ids=lambda row: f"{row[0]} ct")
def test_a_table_that_rounds(row: list[str], known: dict[str, Any]) -> None:
    carat, printed = row
    assert abs(fineness(carat, known) - float(printed)) <= half_a_digit(printed)


def test_eleven_twelfths(known: dict[str, Any]) -> None:
    """911metallurgist-gold-copper, standards of fineness: 22 ct is eleven twelfths, 916.6 parts in
    1000; the print cuts off what rounds to 916.7.
    """
    share = fineness("22", known)
    assert share == pytest.approx(1000 * 11 / 12)
    assert math.floor(10 * share) / 10 == 916.6


def test_the_mark_of_fourteen_carat_is_more(known: dict[str, Any]) -> None:
    """585 in law (hallmarking-convention-uk, uk-si-2011-3039) against 583.33: fourteen parts of 24
    do not reach the mark, and the formula says so.
    """
    exactly = fineness("14", known)
    assert 585 - exactly == pytest.approx(1.667, abs=0.001)
    answer = register.compute("fineness", {"carat": 14}, known)
    said = {note.id: note.values["fineness"] for note in answer.notes}
    assert said["standard-above"] == 585
    assert float(said["standard-reached"]) < 583.34
    reached = register.compute("fineness", {"fineness": 585}, known)
    assert {note.id: note.values["fineness"] for note in reached.notes}["standard-reached"] == 585


# mass | its carat | wanted carat. Both rules are those of the same forum's answer: to lower,
# A = G (K - W)/W of alloy; to raise, F = S (W - K)/(24 - W) of fine gold.
CHANGES = table("""
10   | 24 | 18
100  | 22 | 9
31.1 | 18 | 14
10   | 9  | 18
52.5 | 14 | 22
7    | 10 | 14
""")


@pytest.mark.parametrize("row", CHANGES, ids=lambda row: f"{row[1]} to {row[2]} ct")
def test_the_printed_rules_of_raising_and_lowering(row: list[str], known: dict[str, Any]) -> None:
    mass, have, want = map(float, row)
    inputs = {"mass": mass, "fineness": fineness(row[1], known), "target": fineness(row[2], known)}
    answer = register.compute("change-fineness", inputs)
    printed = mass * (have - want) / want if want < have else mass * (want - have) / (24 - want)
    assert answer.outputs["add"] == pytest.approx(printed)
    assert answer.notes[0].id == ("alloying" if want < have else "fine")
