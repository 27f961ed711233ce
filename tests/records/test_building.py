"""The vocabulary's own slips, which would make everything else look wrong."""

from __future__ import annotations

from temperbook.paths import Project
from temperbook.records import building
from temperbook.records.load import load


def test_a_unit_that_nobody_knows(small: Project) -> None:
    path = small.data / "vocabulary" / "quantities.yaml"
    text = path.read_text(encoding="utf-8")
    path.write_text(text.replace("unit: g/cm3", "unit: g/ccm"), encoding="utf-8")
    _, (problem,) = building.vocabulary(small)
    assert problem.text == "density has an unknown unit"
    assert problem.found == "g/ccm"
    assert problem.needed.startswith("did you mean `g/cm3`")
    assert text.splitlines()[problem.line - 1].startswith("density:")
    _, found = load(small)
    assert found == [problem]


def test_a_quantity_without_meaning(small: Project) -> None:
    path = small.data / "vocabulary" / "quantities.yaml"
    path.write_text("pour: {label: Pour, group: melting, unit: degC}\n", encoding="utf-8")
    (problem, *_) = building.vocabulary(small)[1]
    assert problem.text == "pour lacks the key `meaning`"


def test_the_real_vocabulary_is_good(project: Project) -> None:
    vocabulary, problems = building.vocabulary(project)
    assert problems == []
    groups = set(vocabulary.words["group"])
    for name, quantity in vocabulary.quantities.items():
        assert quantity.group in groups, name
        assert bool(quantity.words) == (quantity.unit == "word"), name
        assert not set(quantity.needs) & set(quantity.allows), name
