"""Each sign says where its name and what it shows were read, or that it is from memory."""

from __future__ import annotations

import re

import pytest

from temperbook.drawing.signs import SIGNS
from temperbook.records.evidence import Evidence
from temperbook.records.load import Library

SUBJECT = "bench/safety-signs"
NUMBER = re.compile(r"[EMPW]\d{3}|GHS\d{2}")


def number(sign: str) -> str:
    """`iso-w016` -> `W016`, `ghs02` -> `GHS02`."""
    return sign.removeprefix("iso-").upper()


def rows(library: Library, quantity: str) -> dict[str, list[Evidence]]:
    found: dict[str, list[Evidence]] = {}
    for row in library.evidence.values():
        if row.record == SUBJECT and row.quantity == quantity:
            found.setdefault(row.name, []).append(row)
    return found


def from_memory(library: Library) -> set[str]:
    """The signs that a remark names as remembered."""
    said = library.subjects[SUBJECT].remarks
    return {n for remark in said if remark.how == "memory" for n in NUMBER.findall(remark.text)}


@pytest.mark.parametrize("quantity", ["sign-name", "sign-content"])
def test_each_sign_has_a_row_or_is_named_as_from_memory(library: Library, quantity: str) -> None:
    read = rows(library, quantity)
    without = {number(s) for s in SIGNS} - set(read)
    assert without == from_memory(library)
    for found in read.values():
        assert all(row.printed_value and row.locator for row in found)


def test_the_vocabulary_calls_each_sign_as_the_list_does(library: Library) -> None:
    """Names as printed by the lists of ISO 7010 and by the agency for GHS; our spelling is
    British."""

    def plain(text: str) -> str:
        return text.casefold().replace("iz", "is")

    names = rows(library, "sign-name")
    for sign, word in library.vocabulary.words["sign"].items():
        its_number, name = word.label.split(" ", 1)
        assert its_number == number(sign)
        printed = {plain(row.printed_value) for row in names[its_number]}
        assert plain(name) in printed, word.label


def test_each_row_stands_behind_a_remark(library: Library) -> None:
    used = {i for remark in library.subjects[SUBJECT].remarks for i in remark.from_}
    own = {row.id for row in library.evidence.values() if row.record == SUBJECT}
    assert own == used


def test_what_was_only_seen_in_copies_is_named(library: Library) -> None:
    """A drawing looked at is not a description: the record names each sign without words."""
    content = rows(library, "sign-content")
    seen = {
        name
        for name, found in content.items()
        if NUMBER.fullmatch(name) and {row.source for row in found} == {"iso-7010-drawn"}
    }
    (said,) = [r for r in library.subjects[SUBJECT].remarks if r.text.startswith("No words")]
    assert set(NUMBER.findall(said.text)) == seen
