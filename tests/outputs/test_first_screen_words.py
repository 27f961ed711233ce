"""The words of an alloy's first screen: four limits, each with its provenance or its absence."""

from __future__ import annotations

from collections.abc import Mapping

import pytest
from outputs.building import ALLOYS
from outputs.html_tree import Element

from temperbook.derive.handbook import Handbook
from temperbook.views import routes
from temperbook.views.alloy_limits import NONE_FOUND, large

LABELS = ["Anneal", "Between anneals", "Cooling", "Do not exceed"]
MARKS = {"published", "judged", "computed", "practice", "memory"}


@pytest.mark.parametrize("alloy_id", ALLOYS)
def test_limits_have_a_provenance_or_say_that_none_was_found(
    alloy_id: str, pages: Mapping[str, Element], handbook: Handbook
) -> None:
    block = pages[routes.page("alloys", alloy_id)].one("section", "limits")
    limits = block.all("div", "limit")
    labels = [limit.one("dt").text() for limit in limits]
    assert len(labels) == len(LABELS)
    assert all(text.startswith(due) for text, due in zip(labels, LABELS, strict=True)), labels
    for limit, due in zip(limits, large(handbook.library.alloys[alloy_id], handbook), strict=True):
        text = limit.one("dd").text()
        marks = limit.one("dt").all("svg", "mark")
        if NONE_FOUND in text:
            assert not marks
            assert limit.one("span", "limit-figure").text() == "—"
        else:
            assert len(marks) == 1, text
            assert marks[0].one("use").attrs["href"].removeprefix("#mark-") in MARKS
            assert marks[0].attrs["aria-label"]
            assert limit.one("span", "limit-figure").text() == " ".join(due.figure.split())


@pytest.mark.parametrize("alloy_id", ALLOYS)
def test_a_reduction_never_stands_without_its_basis(
    alloy_id: str, pages: Mapping[str, Element], handbook: Handbook
) -> None:
    block = pages[routes.page("alloys", alloy_id)].one("section", "limits")
    said = block.all("div", "limit")[1].one("dd").text()
    words = handbook.library.vocabulary
    bases = [words.label("of", word) for word in words.words["of"]]
    assert NONE_FOUND in said or any(basis in said for basis in bases), said


@pytest.mark.parametrize("alloy_id", ALLOYS)
def test_what_can_hurt_at_once_is_said(alloy_id: str, pages: Mapping[str, Element]) -> None:
    block = pages[routes.page("alloys", alloy_id)].one("section", "limits")
    line = block.one("p", "caution-now")
    signal = line.one("strong", "caution-signal").text()
    assert signal in ("DANGER", "WARNING", "CAUTION")
    assert len(line.text()) > len(signal) + 10
    assert "cautions/" in line.one("a").attrs["href"]
