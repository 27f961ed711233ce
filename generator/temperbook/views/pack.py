"""A reading pack: chapters, exercises with computed answers, cautions, glossary, sources, a page
to sign."""

from __future__ import annotations

import re
from dataclasses import dataclass

from temperbook.derive import computing
from temperbook.derive.handbook import Handbook
from temperbook.records import prose as records_prose
from temperbook.records.models import Exercise, Pack
from temperbook.views import caution, pages, sections
from temperbook.views import prose as spoken
from temperbook.views.caution import CautionPage
from temperbook.views.formatting import SPACE
from temperbook.views.pages import Link
from temperbook.views.prose import Passage
from temperbook.views.sections import TermShown


@dataclass(frozen=True)
class Chapter:
    """A chapter of a pack."""

    title: str
    passages: list[Passage]


@dataclass(frozen=True)
class ExerciseShown:
    """A question, its answers with units, the formula, and what they teach."""

    ask: str
    answers: list[tuple[str, str]]
    formula: str
    why: str


@dataclass(frozen=True)
class PackShown:
    """What a pack says."""

    title: str
    subtitle: str
    for_whom: str
    chapters: list[Chapter]
    exercises: list[ExerciseShown]
    cautions: list[CautionPage]
    signed: list[str]
    glossary: list[TermShown]
    sources: list[Link]
    legend: list[tuple[str, str]]
    edition: str
    address: str


def shown(pack: Pack, handbook: Handbook) -> PackShown:
    """One pack."""
    library = handbook.library
    texts = [library.prose[chapter] for chapter in pack.chapters]
    return PackShown(
        title=pack.title,
        subtitle=pack.subtitle,
        for_whom=pack.for_,
        chapters=[
            Chapter(t.title, [spoken.without_links(p) for p in spoken.passages(t, handbook)])
            for t in texts
        ],
        exercises=[_exercise(e, handbook) for e in pack.exercises],
        cautions=[caution.shown(c, handbook) for c in handbook.cautions_in(pack)],
        signed=pack.signed,
        glossary=sections.terms(handbook, pack.glossary),
        sources=_sources(texts, handbook),
        legend=pages.legend(),
        edition=f"{library.edition.name}, {library.edition.date}",
        address=f"{library.edition.address}reading-packs/{pack.id}/",
    )


def _exercise(exercise: Exercise, handbook: Handbook) -> ExerciseShown:
    outputs = computing.compute(exercise.formula, exercise.inputs, handbook.library)
    given = {name: _given(name, value) for name, value in exercise.inputs.items()}
    found = {
        name: spoken.output(exercise.formula, name, value)
        for name, value in outputs.items()
        if isinstance(value, int | float) and not isinstance(value, bool)
    }
    return ExerciseShown(
        ask=filled(exercise.ask, given),
        answers=[(name.replace("-", " "), found[name]) for name in exercise.answers],
        formula=computing.formula_text(exercise.formula),
        why=filled(exercise.why, given | found),
    )


def _given(name: str, value: object) -> str:
    """An input as a sentence says it: `1.0 mm round`, `20 × 3 mm`, `60`."""
    text = str(value)
    if name not in ("from", "to", "section") or " " not in text:
        return text
    shape, size = text.split(" ", 1)
    if shape == "flat":
        return f"{size.replace('x', ' × ')}{SPACE}mm"
    return f"{size}{SPACE}mm {shape}"


def filled(text: str, words: dict[str, str]) -> str:
    """A text with `{name}` replaced by its word. Errors: KeyError for a name that has none."""
    return re.sub(r"\{([a-z0-9-]+)\}", lambda match: words[match[1]], text)


def _sources(texts: list[records_prose.Prose], handbook: Handbook) -> list[Link]:
    rows = [
        row
        for text in texts
        for call in text.figure_calls()
        for row in handbook.figure(call.target).figure.from_
    ]
    ids = dict.fromkeys(handbook.library.evidence[row].source for row in rows)
    links = [pages.source_link(source, handbook) for source in ids]
    return sorted(links, key=lambda link: link.text.lower())
