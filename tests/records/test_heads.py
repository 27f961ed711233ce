"""Names from the heads of files lead where the whole records lead."""

from __future__ import annotations

import pytest

from temperbook.paths import Project
from temperbook.records import heads, names, partial
from temperbook.records.load import Library


def test_heads_are_those_of_the_records(library: Library) -> None:
    known = heads.read(library.project)
    assert list(known) == list(library.alloys)
    for alloy_id, alloy in library.alloys.items():
        head = known[alloy_id]
        assert (head.id, head.name, head.short) == (alloy.id, alloy.name, alloy.short)
        assert head.also == list(alloy.also)
        assert head.composition == dict(alloy.composition)
        assert head.family == alloy.family


@pytest.mark.parametrize("name", ["sterling", "925", "750", "18 karat yellow", "qqqq", "brass"])
def test_a_name_finds_the_same(name: str, library: Library) -> None:
    assert names.find(name, heads.read(library.project)) == names.find(name, library.alloys)


def test_one_alloy_is_read_alone(library: Library) -> None:
    found = partial.read(library.project, ["alloys"], "silver/sterling-925")
    assert list(found.alloys) == ["silver/sterling-925"]
    assert found.alloys["silver/sterling-925"] == library.alloys["silver/sterling-925"]


def test_a_head_that_cannot_be_read_is_left_to_the_whole(small: Project) -> None:
    path = next((small.data / "alloys").rglob("*.yaml"))
    path.write_text("id: [", encoding="utf-8")
    assert heads.read(small) == {}
