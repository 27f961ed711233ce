"""The pages on which formulas are worked out: words for each, fields for every input."""

from __future__ import annotations

import json
from typing import Any

import pytest

from temperbook.derive.handbook import Handbook
from temperbook.metal import register
from temperbook.outputs.site import bench_data
from temperbook.views import formula_page, formula_words
from temperbook.views.formula_page import GroupShown


def fields(formula_id: str, handbook: Handbook) -> list[formula_page.FieldShown]:
    parts = formula_page.page(register.FORMULAS[formula_id], handbook).parts
    return [f for p in parts for f in (p.fields if isinstance(p, GroupShown) else [p])]


@pytest.mark.parametrize("formula_id", register.FORMULAS)
def test_each_formula_says_what_it_answers_and_stands_under_a_subject(formula_id: str) -> None:
    assert formula_id in formula_words.ANSWERS
    assert formula_words.subject_of(formula_id) != formula_words.OTHERS


def test_no_word_is_left_of_a_formula_that_is_gone() -> None:
    listed = [i for ids in formula_words.SUBJECTS.values() for i in ids]
    assert sorted(listed) == sorted(register.FORMULAS)
    assert formula_words.ANSWERS.keys() == register.FORMULAS.keys()
    assert formula_words.FIRST.keys() <= register.FORMULAS.keys()
    outputs = {
        name for f in register.FORMULAS.values() for o in f.outputs for name in (o, f"{f.id} {o}")
    }
    assert formula_words.OUTPUTS.keys() <= outputs


@pytest.mark.parametrize("formula_id", register.FORMULAS)
def test_a_form_has_a_field_for_each_input_once(formula_id: str, handbook: Handbook) -> None:
    names = [field.name for field in fields(formula_id, handbook)]
    assert sorted(names) == sorted(register.FORMULAS[formula_id].inputs)


def test_alloys_are_chosen_by_family(handbook: Handbook) -> None:
    families = formula_page.families(handbook)
    ids = [alloy_id for _, found in families for alloy_id in found]
    assert sorted(ids) == sorted(handbook.library.alloys)
    assert len(families) > 3


def test_metals_of_a_table_are_offered(handbook: Handbook) -> None:
    (metal,) = (f for f in fields("anneal-equivalent", handbook) if f.name == "metal")
    assert "copper" in metal.words


@pytest.mark.parametrize(
    ("value", "text"),
    [
        (75.0, "75"),
        (0.70711, "0.7071"),
        (9999.4, "9999"),
        (9999.6, "10,000"),
        (1_443_056.6, "1,443,057"),
        (1.2346e-9, "1.235×10^-9"),
        (2.5e17, "2.5×10^17"),
        (True, "yes"),
        ([1.0, 0.5], "1, 0.5"),
        ("2/0", "2/0"),
    ],
)
def test_figures_are_rounded_as_pages_print_them(value: Any, text: str) -> None:
    assert formula_page.figure(value) == text


def test_the_data_of_the_forms_is_plain_and_whole(handbook: Handbook) -> None:
    content = bench_data.content(handbook)
    data = json.loads(content)
    assert list(data["formulas"]) == list(register.FORMULAS)
    assert data["tables"]["alloys"].keys() == handbook.library.alloys.keys()
    assert "NaN" not in content
    assert "Infinity" not in content
    assert content == bench_data.content(handbook)
