"""Pages of faults and cautions as reading: short sentences, terms explained where they first
stand."""

from __future__ import annotations

import re
from collections.abc import Iterator

import pytest

from temperbook.records.load import Library
from temperbook.views.terms import SHORTEST, Terms

MOST = 20  # words of a sentence, on the average of a page


def texts(library: Library) -> Iterator[tuple[str, list[str]]]:
    """The sentences of each page in the order in which they are read."""
    for fault in library.faults.values():
        causes = [text for cause in fault.causes for text in (cause.text, cause.tell)]
        advice = [remark.text for remark in (*fault.now, *fault.prevent)]
        yield fault.id, [fault.seen, *causes, *advice]
    for caution in library.cautions.values():
        said = [caution.hazard, caution.consequence or "", *caution.avoid, caution.first_aid or ""]
        yield caution.id, [text for text in said if text]


def test_sentences_are_short(library: Library) -> None:
    for page, said in texts(library):
        parts = [part for text in said for part in re.split(r"(?<=[.?!:;])\s+", text)]
        words = [len(part.split()) for part in parts]
        assert sum(words) / len(words) < MOST, page


def test_terms_lead_to_the_glossary_where_they_first_stand(library: Library) -> None:
    linked, terms = 0, Terms(library.glossary)
    for page, said in texts(library):
        split = terms.page()
        pieces = [piece for text in said for piece in split(text)]
        for term_id, term in library.glossary.items():
            word = term.term.lower().split(" (")[0]
            if len(word) < SHORTEST:
                continue
            led = [p for p in pieces if p.href == f"glossary/#{term_id}"]
            assert len(led) <= 1, (page, word)
            pattern = re.compile(rf"\b{re.escape(word)}s?\b", re.IGNORECASE)
            if led:
                before = pieces[: pieces.index(led[0])]
                assert not any(pattern.fullmatch(p.text) for p in before), (page, word)
            elif any(pattern.search(p.text) for p in pieces):
                longer = [p for p in pieces if p.href and pattern.search(p.text)]
                assert longer, (page, word)  # it stands only within a longer term
            linked += len(led)
    assert linked > 100


@pytest.mark.parametrize(
    ("text", "led"),
    [
        ("Anneal it, then anneal again.", ["glossary/#anneal"]),
        ("It tore at the grain boundaries.", ["glossary/#grain-boundary"]),
        ("A <b>quench</b> & more", ["glossary/#quench"]),
        ("Bypass it.", []),
    ],
)
def test_a_text_stays_what_it_was(text: str, led: list[str], library: Library) -> None:
    pieces = Terms(library.glossary).page()(text)
    assert "".join(piece.text for piece in pieces) == text
    assert [piece.href for piece in pieces if piece.href] == led
