"""The data tables of formulas: plain, complete, and as the records have them."""

from __future__ import annotations

import json
from typing import Any

import pytest

from temperbook.derive import computing, tables
from temperbook.metal import mixture, register
from temperbook.paths import Project
from temperbook.records import partial
from temperbook.records.load import Library
from temperbook.records.models import KINDS


@pytest.fixture(scope="module")
def records(project: Project) -> Library:
    return partial.read(project, KINDS)


@pytest.fixture(scope="module")
def everything(records: Library) -> dict[str, Any]:
    return tables.all_of(records)


def test_they_are_plain_data(everything: dict[str, Any]) -> None:
    assert json.loads(json.dumps(everything)) == everything
    named = {name for formula in register.FORMULAS.values() for name in formula.tables}
    assert named <= everything.keys()
    assert all(everything.values())


def test_numbers_of_the_records(everything: dict[str, Any], records: Library) -> None:
    sterling = records.alloys["silver/sterling-925"]
    plain = everything["alloys"][sterling.id]
    assert plain["composition"] == sterling.composition
    assert plain["density"] == 10.36
    assert plain["figures"]["solidus"][0]["low"] == 779.1
    assert plain["glow"]
    assert everything["densities"]["Cu"] == 8.96
    assert everything["gauges"]["awg"]["18"] == pytest.approx(1.024)
    assert everything["atomic-masses"]["Cu"] == pytest.approx(63.546)
    assert everything["thermal"]["Cu"]["melting-point"] == 1084.62
    assert everything["colour-names"]["Howe, list of 1900"]
    assert len(everything["observer"]) > 80


def test_the_error_of_mixing(everything: dict[str, Any]) -> None:
    """Held against the published densities: within three percent, or four for zinc and silicon."""
    for row in everything["mixing-errors"]:
        assert row["error"] == pytest.approx(100 * (row["mixed"] / row["published"] - 1))
        assert abs(row["error"]) < 4
    assert len(everything["mixing-errors"]) > 10


def test_a_density_carries_that_error(records: Library) -> None:
    answer = computing.answer("density", {"composition": "Ag 92.5, Cu 7.5"}, records)
    said = dict(register.FORMULAS["density"].said(answer))["error"]
    rows = tables.made(("mixing-errors",), records)["mixing-errors"]
    assert f"{len(rows)} alloys" in said
    assert f"{max(row['error'] for row in rows):.1f} percent" in said


@pytest.mark.parametrize("formula", register.FORMULAS)
def test_the_kinds_that_a_formula_names_suffice(formula: str, project: Project) -> None:
    """What the command reads for a formula gives the same answer as all records."""
    declared = register.FORMULAS[formula]
    kinds = tables.kinds(declared.tables, "alloy" in declared.example)
    few = computing.answer(formula, declared.example, partial.read(project, kinds))
    many = computing.answer(formula, declared.example, partial.read(project, KINDS))
    assert few == many


def test_an_alloy_needs_no_charts_nor_cautions(project: Project) -> None:
    few = partial.read(project, tables.ALLOY_KINDS)
    plain = tables.of_alloys(["silver/sterling-925"], few)["silver/sterling-925"]
    assert (plain["glow"], plain["cautions"]) == ("", [])
    inputs = {"alloy": "sterling", "section": "square 6", "length": 60}
    found = computing.compute("mass", inputs, few)["mass"]
    assert found == pytest.approx(mixture.mass(10.36, 36, 60))


def test_names_lead_to_one_alloy(records: Library) -> None:
    assert computing.named({"alloy": "C26000"}, records) == {"alloy": "copper/cartridge-brass"}
    assert computing.named({"mass": 1}, records) == {"mass": 1}
    with pytest.raises(ValueError, match="not the name of one alloy; it may be"):
        computing.named({"alloy": "yellow"}, records)
    with pytest.raises(ValueError, match=r"near it: .*sterling"):
        computing.named({"alloy": "stirling"}, records)


def test_only_systems_that_it_holds_enough_of_order_an_alloy(everything: dict[str, Any]) -> None:
    assert everything["alloys"]["gold/18ct-rose"]["boundaries"]
    assert not everything["alloys"]["japanese/shakudo"]["boundaries"]
    assert not everything["alloys"]["silver/sterling-925"]["boundaries"]
