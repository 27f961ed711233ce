"""The finished handbook: figures by call, cautions by rule, readings, and where each row went."""

from __future__ import annotations

import pytest

from temperbook.derive import cautions
from temperbook.derive.handbook import Handbook, derive
from temperbook.paths import Project
from temperbook.records.load import load
from temperbook.records.models import Applies


@pytest.fixture
def made_up(small: Project) -> Handbook:
    library, found = load(small)
    assert not found
    return derive(library)


def test_a_figure_by_call(made_up: Handbook) -> None:
    called = made_up.figure("copper/net-bronze#anneal")
    assert called.address == "copper/net-bronze#anneal@heat=torch"
    assert (called.record, called.quantity) == ("copper/net-bronze", "anneal")
    assert called.figure.ends == (550, 600)


@pytest.mark.parametrize(
    "call",
    [
        "copper/net-bronze#reduction-ceiling",  # two of them
        "copper/net-bronze#anneal@heat=kiln",
        "copper/net-brass#anneal",
        "",
    ],
)
def test_a_call_that_fits_none_or_several(call: str, made_up: Handbook) -> None:
    with pytest.raises(KeyError):
        made_up.figure(call)


def test_cautions_of_an_alloy(made_up: Handbook) -> None:
    """One is carried everywhere, the other where the record names it; the gravest stands first."""
    carried = {alloy: [c.id for c in found] for alloy, found in made_up.cautions_of.items()}
    assert carried == {
        "copper/net-bronze": ["hot-metal", "bright-melt"],
        "copper/loft-bronze": ["hot-metal"],
    }
    assert [alloy.id for alloy in made_up.alloys_with("bright-melt")] == ["copper/net-bronze"]


@pytest.mark.parametrize(
    ("rule", "covers"),
    [
        ({"always": True}, True),
        ({"elements": {"Sn": 5}}, True),
        ({"elements": {"Sn": 5.1}}, False),
        ({"elements": {"Zn": 0.1, "Cu": 90}}, True),
        ({"families": ["copper"]}, True),
        ({"families": ["gold"]}, False),
        ({"always": True, "record_only": True}, False),
        ({}, False),
    ],
)
def test_where_a_caution_applies(rule: dict[str, object], covers: bool, made_up: Handbook) -> None:
    caution = made_up.library.cautions["hot-metal"].model_copy(
        update={"applies": Applies.model_validate(rule, strict=False)}
    )
    assert cautions.applies(caution, made_up.library.alloys["copper/loft-bronze"]) is covers


def test_readings_are_those_of_the_alloy_and_of_its_family(made_up: Handbook) -> None:
    alloy = made_up.library.alloys["copper/loft-bronze"]
    rows = made_up.readings_for(alloy)
    assert {row.record for row in rows} == {"copper/loft-bronze", "family/net-bronzes"}
    records = [row.record for row in rows]
    assert records == sorted(records)  # its own come first


def test_every_row_says_where_it_went(made_up: Handbook) -> None:
    went = made_up.rests_on
    assert went["loft-sheet-1.3"] == ["copper/net-bronze#solidus@state=cast"]
    assert went["loft-sheet-1.1"] == ["copper/net-bronze#composition"]
    assert went["loft-sheet-1.10"] == ["copper/net-bronze#quench", "copper/net-bronze#remarks"]
    assert "hot-metal" in went["loft-safety-note.1"]
    assert set(went) == set(made_up.library.evidence)


def test_names_of_records(made_up: Handbook) -> None:
    assert made_up.name_of("family/net-bronzes") == "Net bronzes"
    assert made_up.name_of("Cu") == "Copper"
    with pytest.raises(KeyError):
        made_up.name_of("Au")
