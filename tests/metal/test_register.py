"""Every formula of the register: its worked example, its declared inputs and outputs."""

from __future__ import annotations

import json
import math
import re
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from temperbook.derive import computing, tables
from temperbook.metal import register
from temperbook.metal.register import reading
from temperbook.metal.register.formula import Formula, Said, filled, listed
from temperbook.records.load import Library

FORMULAS = list(register.FORMULAS.values())
# The ids of the issue, which commands, pages and packs call.
IDS = [
    "reduction",
    "reduction-basis",
    "density",
    "atomic-percent",
    "fineness",
    "mass",
    "melt-charge",
    "alloying",
    "rolled-length",
    "heat-to-melt",
    "change-fineness",
    "ring-size",
    "ring-blank",
    "gauge",
    "heat-colour",
    "brightness-temperature",
    "max-draft",
    "roll-force",
    "draw-force",
    "draw-schedule",
    "delta-factor",
    "temper",
    "anneal-equivalent",
    "grains-across",
    "breaking-load",
    "draw-margin",
]


def known(formula: Formula, records: Library) -> dict[str, Any]:
    """The tables that a formula's example was made for, or the handbook's."""
    if formula.example_tables or not formula.tables:
        return dict(formula.example_tables)
    alloys = [formula.example["alloy"]] if "alloy" in formula.example else []
    return tables.made(formula.tables, records, alloys)


def test_every_formula_that_was_asked_for_is_there() -> None:
    assert sorted(register.FORMULAS) == sorted(IDS)


@pytest.mark.parametrize("formula", FORMULAS, ids=lambda formula: formula.id)
def test_the_worked_example_comes_out(formula: Formula, records: Library) -> None:
    """Sources: each formula names its own; the examples that are printed carry their number."""
    found = register.compute(formula.id, formula.example, known(formula, records)).outputs
    assert formula.expected
    for name, value in formula.expected.items():
        if isinstance(value, str | bool):
            assert found[name] == value
        else:
            assert found[name] == pytest.approx(value, rel=5e-4)


@pytest.mark.parametrize("formula", FORMULAS, ids=lambda formula: formula.id)
def test_it_declares_what_it_takes_and_gives(formula: Formula, records: Library) -> None:
    answer = register.compute(formula.id, formula.example, known(formula, records))
    others = answer.outputs.keys() - formula.outputs.keys()
    assert bool(others) == bool(formula.series)
    assert all(re.fullmatch(r"[A-Z][a-z]?", name) for name in others)
    assert {name for group in formula.groups for way in group for name in way} <= {*formula.inputs}
    assert all(formula.unit_in(name, answer) is not None for name in answer.outputs)
    assert formula.formula
    assert formula.source
    assert json.loads(json.dumps(answer.outputs)) == answer.outputs


@pytest.mark.parametrize("formula", FORMULAS, ids=lambda formula: formula.id)
def test_the_handbook_answers_the_example_too(formula: Formula, records: Library) -> None:
    answer = computing.answer(formula.id, formula.example, records)
    assert answer.outputs.keys() >= formula.expected.keys()
    assert all(text for _, text in formula.said(answer))


@pytest.mark.parametrize("formula", FORMULAS, ids=lambda formula: formula.id)
def test_it_refuses_what_is_missing_and_what_it_does_not_know(formula: Formula) -> None:
    needed = next((name for name in formula.needed()), None)
    if needed:
        without = {k: v for k, v in formula.example.items() if k != needed}
        with pytest.raises(ValueError, match=f"missing: .*{needed}"):
            register.compute(formula.id, without)
    for group in formula.groups:
        names = {name for way in group for name in way}
        without = {k: v for k, v in formula.example.items() if k not in names}
        with pytest.raises(ValueError, match=r"needed: one of \("):
            register.compute(formula.id, without)
    with pytest.raises(ValueError, match="unknown: spring"):
        register.compute(formula.id, {**formula.example, "spring": 1})


NO_NUMBERS = [math.nan, math.inf, -math.inf, True, "1e400", "1e3", "0x10", "nan", "inf", "", "1_0"]


@pytest.mark.parametrize("bad", [*NO_NUMBERS, [1], 10**400], ids=lambda bad: str(bad)[:8])
@pytest.mark.parametrize("formula", FORMULAS, ids=lambda formula: formula.id)
def test_what_is_no_number_is_refused(formula: Formula, bad: Any, records: Library) -> None:
    numbers = [n for n in formula.example if formula.inputs[n].kind == "number"]
    for name in numbers:
        with pytest.raises(ValueError, match=rf"^{name} is a plain (finite )?number"):
            register.compute(formula.id, {**formula.example, name: bad}, known(formula, records))
    assert numbers or formula.id in ("reduction", "density", "atomic-percent", "ring-size", "gauge")


@pytest.mark.parametrize("size", [1e-320, 1e-160, 1e160, 1e300, -1.0, 0.0])
@pytest.mark.parametrize("formula", FORMULAS, ids=lambda formula: formula.id)
def test_no_number_however_odd_gives_nonsense(
    formula: Formula, size: float, records: Library
) -> None:
    """It answers with finite numbers, or refuses with a sentence."""
    here = known(formula, records)
    for name in (n for n in formula.example if formula.inputs[n].kind == "number"):
        found = refusal_or_outputs(formula, {**formula.example, name: size}, here)
        if isinstance(found, str):
            assert len(found) > 10
            assert "domain" not in found
        else:
            assert all(math.isfinite(v) for v in found.values() if isinstance(v, float))


def refusal_or_outputs(
    formula: Formula, inputs: dict[str, Any], here: dict[str, Any]
) -> str | dict[str, Any]:
    """What a formula answers, or the sentence by which it refuses."""
    try:
        return register.compute(formula.id, inputs, here).outputs
    except ValueError as error:
        return str(error)


def test_what_a_formula_takes_is_told_in_one_line() -> None:
    assert reading.usage(register.FORMULAS["mass"]) == "section, length, one of (alloy | density)"
    assert reading.usage(register.FORMULAS["brightness-temperature"]) == (
        "temperature, emissivity, [wavelength], [find]"
    )
    with pytest.raises(ValueError, match=r"needed: one of \(alloy \| density\)"):
        register.compute("mass", {"alloy": "x", "density": 1, "section": "round 1", "length": 1})


def test_none_counts_as_not_given() -> None:
    inputs = {"density": 10, "alloy": None, "section": "square 6", "length": 100}
    assert register.compute("mass", inputs, {}).outputs["mass"] == pytest.approx(36)


@pytest.mark.parametrize(
    ("template", "values", "said"),
    [
        ("{a} and {b:.1f}", {"a": "copper", "b": 2.25}, "copper and 2.2"),
        ("{long-name:g} mm", {"long-name": 1.0}, "1 mm"),
        ("{b:.0f}", {"b": 0.5}, "0"),
        ("{b:g}", {"b": 1234567.0}, "1.23457e+06"),
    ],
)
def test_templates(template: str, values: dict[str, Any], said: str) -> None:
    assert filled(template, values) == said


def test_templates_take_texts_and_numbers_where_they_are_due() -> None:
    with pytest.raises(TypeError, match="b is no text"):
        filled("{b}", {"b": 2.0})
    with pytest.raises(KeyError):
        filled("{c}", {})


def test_every_note_has_its_template() -> None:
    """Only the forms that the browser fills too: {x}, {x:.1f}, {x:g}."""
    for formula in FORMULAS:
        for template in formula.notes.values():
            slots = re.findall(r"\{([^}]*)\}", template)
            assert all(re.fullmatch(r"[a-z-]+(:(\.\df|g))?", slot) for slot in slots), template
    assert Said("x").values == {}


def test_words_with_their_last() -> None:
    assert [listed(["a", "b", "c"][:n]) for n in (1, 2, 3)] == ["a", "a or b", "a, b or c"]


@given(st.floats(0.01, 1e6), st.integers(0, 6))
def test_a_number_may_be_typed(value: float, decimals: int) -> None:
    typed = f"{value:.{decimals}f}"
    assert reading.number("x", typed) == float(typed)


def test_who_takes_an_alloy_reads_their_table() -> None:
    for formula in FORMULAS:
        takes = any(declared.kind == "alloy" for declared in formula.inputs.values())
        assert takes == ("alloys" in formula.tables), formula.id
