"""Alloys are found by what people call them. Names are tried on the real records."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from temperbook.records.load import Library
from temperbook.records.names import find, fineness, normal


@pytest.mark.parametrize(
    ("name", "alloy"),
    [
        ("sterling", "silver/sterling-925"),
        ("Sterling Silver", "silver/sterling-925"),
        ("STERLING-SILVER", "silver/sterling-925"),
        ("silver/sterling-925", "silver/sterling-925"),
        ("925", "silver/sterling-925"),
        ("925 silver", "silver/sterling-925"),
        ("18k yellow", "gold/18ct-yellow"),
        ("18 Karat yellow", "gold/18ct-yellow"),
        ("18 carat yellow", "gold/18ct-yellow"),
        ("18 ct yellow", "gold/18ct-yellow"),
        ("18kt-yellow", "gold/18ct-yellow"),
        ("18 ct rose", "gold/18ct-rose"),
        ("copper", "copper/tough-pitch"),
        ("c26000", "copper/cartridge-brass"),
        ("C 260 00", "copper/cartridge-brass"),
        ("CuZn30", "copper/cartridge-brass"),
        ("britannia", "silver/britannia-958"),
        ("shibuichi", "japanese/shibuichi"),
    ],
)
def test_one_alloy(name: str, alloy: str, library: Library) -> None:
    assert find(name, library.alloys).ids == (alloy,)


@pytest.mark.parametrize(
    ("name", "alloy"),
    [
        ("sterlnig", "silver/sterling-925"),
        ("stirling silver", "silver/sterling-925"),
        ("shakudou", "japanese/shakudo"),
        ("cartridge bras", "copper/cartridge-brass"),
        ("c26oo0", "copper/cartridge-brass"),
        ("nickle silver", "copper/nickel-silver"),
    ],
)
def test_slips_suggest(name: str, alloy: str, library: Library) -> None:
    found = find(name, library.alloys)
    # A part of a name may be found as well; what matters is that the alloy comes up.
    assert alloy in (*found.ids, *found.near)


def test_what_is_far_from_every_name_suggests_nothing(library: Library) -> None:
    found = find("qqqqxxxxzzzz", library.alloys)
    assert (found.ids, found.near) == ((), ())


def test_several_hits_are_all_listed(library: Library) -> None:
    gold = find("750", library.alloys)
    assert set(gold.ids) == {
        i
        for i, alloy in library.alloys.items()
        if fineness(alloy) == "750" and i.startswith(("gold/", "silver/"))
    }
    assert {"gold/18ct-yellow", "gold/18ct-green", "silver/silver-750"} <= set(gold.ids)
    assert len(find("18 ct", library.alloys).ids) >= 3
    assert not gold.near


@pytest.mark.parametrize("name", ["", " ", "!!!", "-", "金"])
def test_nothing_finds_nothing(name: str, library: Library) -> None:
    found = find(name, library.alloys)
    assert (found.ids, found.near) == ((), ())


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("18 Karat", "18ct"),
        ("18k", "18 carat"),
        ("18k yellow", "18CT-YELLOW"),
        ("Sterling  Silver", "sterling_silver"),
        ("Aluminum bronze", "aluminium bronze"),
    ],
)
def test_normal(one: str, other: str) -> None:
    assert normal(one) == normal(other)


@pytest.mark.parametrize("word", ["kupfer", "tombak", "nickel", "k18"])
def test_a_k_inside_a_word_is_no_carat(word: str) -> None:
    assert normal(word) == word


@pytest.mark.parametrize(
    ("alloy", "text"),
    [
        ("silver/sterling-925", "925"),
        ("silver/britannia-958", "958"),
        ("silver/fine-999", "999"),
        ("gold/14ct-yellow", "585"),
        ("gold/18ct-rose", "750"),
        ("platinum/950-ruthenium", "950"),
        ("copper/cartridge-brass", ""),
        ("japanese/shibuichi", ""),
    ],
)
def test_fineness(alloy: str, text: str, library: Library) -> None:
    """Finenesses in parts per thousand as people say them; base metal has none."""
    assert fineness(library.alloys[alloy]) == text


def test_every_alloy_is_found_by_each_of_its_names(library: Library) -> None:
    for alloy_id, alloy in library.alloys.items():
        for name in (alloy_id, alloy.name, *alloy.also):
            assert find(name, library.alloys).ids == (alloy_id,), name


@given(name=st.text(max_size=20))
def test_any_text_gives_known_ids(name: str, library: Library) -> None:
    found = find(name, library.alloys)
    assert {*found.ids, *found.near} <= library.alloys.keys()
    assert not (found.ids and found.near)
