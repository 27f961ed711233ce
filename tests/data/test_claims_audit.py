"""Rows behind faults and cautions, read again in their sources by readers who had not typed them.

`claims.csv`: whether the passage was found again, and what came of it. `mended`: the row or the
claim said more, or less, than its source; what was changed stands beside it.
"""

from __future__ import annotations

import csv
from collections import Counter
from pathlib import Path

import pytest

from temperbook.records.load import Library

ROWS = Path(__file__).parent / "second_reading" / "claims.csv"
FOUND = {"yes", "passage not shown", "no", "not looked up"}
VERDICTS = {"agrees", "mended", "not judged"}


@pytest.fixture(scope="module")
def audited() -> list[dict[str, str]]:
    with ROWS.open(encoding="utf-8", newline="") as stream:
        return list(csv.DictReader(stream))


def test_the_rows_are_of_faults_and_cautions(
    audited: list[dict[str, str]], library: Library
) -> None:
    assert len(audited) == len({row["id"] for row in audited}) >= 400
    for row in audited:
        record = library.evidence[row["id"]].record
        assert record in library.faults or record in library.cautions, row["id"]


def test_most_were_found_again_and_the_rest_is_said(audited: list[dict[str, str]]) -> None:
    for row in audited:
        assert row["found"] in FOUND, row["id"]
        assert row["verdict"] in VERDICTS, row["id"]
        assert (row["verdict"] == "not judged") <= (row["found"] != "yes"), row["id"]
        assert row["verdict"] != "mended" or row["changed"], row["id"]
    found = Counter(row["found"] for row in audited)
    assert found["yes"] / len(audited) > 0.85


def test_nearly_every_claim_of_a_fault_rests_on_rows(library: Library) -> None:
    """What was not found in print is marked as common practice."""
    claims = [
        claim
        for fault in library.faults.values()
        for claim in (*fault.causes, *fault.now, *fault.prevent)
    ]
    assert all(bool(claim.from_) == (claim.how != "practice") for claim in claims)
    assert sum(bool(claim.from_) for claim in claims) / len(claims) > 0.93
    for fault in library.faults.values():
        assert any(cause.from_ for cause in fault.causes), fault.id
        assert any(advice.from_ for advice in (*fault.now, *fault.prevent)), fault.id
