"""The pages of the work read well: short sentences, terms explained at first use, numbers by id."""

from __future__ import annotations

import re
from collections.abc import Iterator

import pytest

from temperbook.records import prose
from temperbook.records.link_prose import STEPS
from temperbook.records.load import Library
from temperbook.records.prose import Inline, Prose

MOST = 20  # words of a sentence, on the average of a page
MINUTES, PACE = 10, 200  # longest reading of a page, words in a minute
WELL_KNOWN = {"alloy", "ingot", "grain", "mould", "quench", "anneal", "pickle", "crucible"}


def pages() -> list[str]:
    return [f"pages/{stem}" for stem in STEPS]


def texts(page: Prose) -> list[str]:
    """The running text of each paragraph or item."""
    blocks = [b for b in prose.walk(page.blocks) if b.kind in ("paragraph", "cell")]
    return [prose.plain(block.inlines) for block in blocks if block.inlines]


def sentences(page: Prose) -> list[str]:
    found = [part for text in texts(page) for part in re.split(r"(?<=[.?!:])\s+", text)]
    return [part for part in found if len(part.split()) > 1]


@pytest.mark.parametrize("stem", pages())
def test_sentences_are_short_and_the_page_is_read_in_ten_minutes(
    stem: str, library: Library
) -> None:
    page = library.prose[stem]
    words = [len(sentence.split()) for sentence in sentences(page)]
    assert sum(words) >= 400, "a step is more than a note"
    assert sum(words) / len(words) < MOST
    assert sum(words) < MINUTES * PACE


def runs(inlines: tuple[Inline, ...], linked: str = "") -> Iterator[tuple[str, str]]:
    """Each piece of text with the target of the link that it stands in."""
    for inline in inlines:
        if inline.kind == "text":
            yield inline.text, linked
        target = inline.target if inline.kind == "link" else linked
        yield from runs(inline.children, target)


@pytest.mark.parametrize("stem", pages())
def test_terms_are_explained_where_they_first_stand(stem: str, library: Library) -> None:
    """The first use of a term of several letters is a link to the glossary, or to its own page."""
    blocks = [
        b for b in prose.walk(library.prose[stem].blocks) if b.kind in ("paragraph", "cell", "item")
    ]
    said = [run for block in blocks for run in runs(block.inlines)]
    for term_id, term in library.glossary.items():
        word = term.term.lower().split(" (")[0]
        if term_id in WELL_KNOWN or len(word) < 6:
            continue
        pattern = re.compile(rf"\b{re.escape(word)}s?\b", re.IGNORECASE)
        first = next(((text, link) for text, link in said if pattern.search(text)), None)
        if first is not None:
            assert first[1], f"{word}: {first[0][:80]}"


@pytest.mark.parametrize("stem", pages())
def test_a_step_calls_numbers_and_leads_on(stem: str, library: Library) -> None:
    page = library.prose[stem]
    links = {link.target.partition(":")[0] for link in page.links()}
    assert "fault" in links or "page" in links
    assert len(page.links()) >= 8
    assert page.figure_calls() or any(i.kind == "compute" for i in page.inlines())
