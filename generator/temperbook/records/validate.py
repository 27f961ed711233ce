"""Holds records against the vocabulary: quantities, units, basis keys, words."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import TYPE_CHECKING

from temperbook.problems import Problem, nearest
from temperbook.records.figures import BASIS_KEYS, WORDED, Figure, Rule
from temperbook.records.models import RULES
from temperbook.records.vocabulary import Quantity, Vocabulary
from temperbook.records.yaml_reader import Document, Location, shown_location

if TYPE_CHECKING:
    from temperbook.records.load import Library

MEND_OF = "look in the source which size was measured; if it does not say, write `of: not-stated`"


def problems(library: Library) -> list[Problem]:
    """What the vocabulary does not allow, in records and in evidence."""
    vocabulary = library.vocabulary
    found: list[Problem] = []
    for record_id, quantity, position, figure in library.placed_figures():
        place = ("figures", quantity, position)
        found += _figure(library.document(record_id), place, quantity, figure, vocabulary)
    for alloy_id, alloy in library.alloys.items():
        document = library.document(alloy_id, "alloys")
        found += _family(document, ("id",), alloy.family, vocabulary)
        for key, quantity in RULES.items():
            found += _rule(document, key, quantity, getattr(alloy, key), vocabulary)
    for solder_id, solder in library.solders.items():
        document = library.document(solder_id, "solders")
        found += _family(document, ("id",), solder.family, vocabulary)
    for subject_id, subject in library.subjects.items():
        document = library.document(subject_id, "subjects")
        found += _rule(document, "cooling", "cooling", subject.cooling, vocabulary)
    for caution_id, caution in library.cautions.items():
        document = library.document(caution_id, "cautions")
        for position, family in enumerate(caution.applies.families):
            found += _family(document, ("applies", "families", position), family, vocabulary)
        for position, sign in enumerate(caution.signs):
            found += _word(document, ("signs", position), sign, "sign", vocabulary)
        found += _tasks(document, caution.tasks, vocabulary)
    for chart_id, chart in library.charts.items():
        found += _tasks(library.document(chart_id, "charts"), chart.tasks, vocabulary)
    for source_id, source in library.sources.items():
        document = library.document(source_id, "sources")
        for key, vocabulary_name in (("kind", "source-kind"), ("read", "read")):
            found += _word(document, (key,), getattr(source, key), vocabulary_name, vocabulary)
    return found


def _figure(
    document: Document, at: Location, quantity: str, figure: Figure, words: Vocabulary
) -> Iterator[Problem]:
    place = shown_location(at)
    known = words.quantities.get(quantity)
    if known is None:
        yield document.problem(
            at[:2],
            f"unknown quantity `{quantity}`",
            found=quantity,
            needed=nearest(quantity, words.quantities),
            mend="correct the name, or declare the quantity in data/vocabulary/quantities.yaml",
        )
        return
    yield from _value(document, at, figure)
    yield from _unit(document, at, figure.unit, known)
    for key in known.needs:
        if getattr(figure, key) is None:
            yield _no_basis(document, at, place, key, figure, words)
    for key in BASIS_KEYS:
        value = getattr(figure, key)
        if value is None:
            continue
        if key not in (*known.needs, *known.allows):
            yield document.problem(
                (*at, key),
                f"{place}.{key} means nothing for {known.label.lower()}",
                found=f"{key}: {value}",
                needed=_listed((*known.needs, *known.allows)),
                mend="delete the key, or allow it in data/vocabulary/quantities.yaml",
            )
        elif key in WORDED:
            yield from _word(document, (*at, key), value, key, words)


def _no_basis(
    document: Document,
    at: Location,
    place: str,
    key: str,
    figure: Figure,
    words: Vocabulary,
) -> Problem:
    said = f"{place} has no basis" if key == "of" else f"{place} does not say `{key}`"
    allowed = " | ".join(words.words.get(key, {})) or "..."
    mend = MEND_OF if key == "of" else f"add `{key}:`; the quantity means nothing without it"
    return document.problem(
        at, said, found=_figure_text(figure), needed=f"{key}: {allowed}", mend=mend
    )


def _figure_text(figure: Figure) -> str:
    given = figure.model_dump(
        exclude_none=True, exclude={"from_", "how", "why", "inputs", "formula", "note"}
    )
    return (
        "{"
        + ", ".join(
            f"{k}: {v:g}" if isinstance(v, float) else f"{k}: {v}" for k, v in given.items()
        )
        + "}"
    )


def _value(document: Document, at: Location, figure: Figure) -> Iterator[Problem]:
    low, high = figure.low, figure.high
    if figure.how == "computed":
        if any(v is not None for v in (figure.value, low, high)) or not figure.formula:
            yield document.problem(
                at,
                f"{shown_location(at)} is computed, so it is never typed",
                found=_figure_text(figure),
                needed="formula: ... and inputs: {...}, no value",
                mend="delete the value, or say where it was read",
            )
    elif not figure.well_formed:
        yield document.problem(
            at,
            f"{shown_location(at)} has no value or two of them",
            found=_figure_text(figure),
            needed="value: 779.1, or low: 600 and high: 650 (one of them alone: at least, at most)",
            mend="write the one or the other",
        )
    elif low is not None and high is not None and low >= high:
        yield document.problem(
            at,
            f"{shown_location(at)} runs backwards",
            found=_figure_text(figure),
            needed="low below high",
            mend="exchange the two, or write value: for a single number",
        )


def _unit(document: Document, at: Location, unit: str, known: Quantity) -> Iterator[Problem]:
    if unit != known.unit:
        yield document.problem(
            (*at, "unit"),
            f"{shown_location(at)} has the wrong unit",
            found=f"unit: {unit}",
            needed=f"unit: {known.unit}",
            mend="convert the value and write `how: converted`; the "
            "printed value and unit stay in the evidence row",
        )


def _rule(
    document: Document, key: str, quantity: str, rule: Rule | None, words: Vocabulary
) -> Iterator[Problem]:
    allowed = words.quantities[quantity].words if quantity in words.quantities else {}
    if rule and rule.rule not in allowed:
        yield document.problem(
            (key, "rule"),
            f"{key}.rule is no known word",
            found=rule.rule,
            needed=nearest(rule.rule, allowed),
            mend=f"choose one, or add the word to `{quantity}` in data/vocabulary/quantities.yaml",
        )


def _family(document: Document, at: Location, family: str, words: Vocabulary) -> Iterator[Problem]:
    """An alloy of an unknown family would stand in no index, and a caution for one would stand
    nowhere."""
    allowed = words.words.get("family", {})
    if family not in allowed:
        yield document.problem(
            at,
            "names a family that is no known word",
            found=family,
            needed=nearest(family, allowed),
            mend="correct the family, or add the word to `family` in data/vocabulary/words.yaml",
        )


def _tasks(document: Document, tasks: Iterable[str], words: Vocabulary) -> Iterator[Problem]:
    for position, task in enumerate(tasks):
        yield from _word(document, ("tasks", position), task, "task", words)


def _word(
    document: Document, at: Location, word: str, vocabulary: str, words: Vocabulary
) -> Iterator[Problem]:
    allowed = words.words.get(vocabulary, {})
    if word not in allowed:
        yield document.problem(
            at,
            f"{shown_location(at)} is no known word",
            found=word,
            needed=nearest(word, allowed),
            mend=f"choose one, or add the word to `{vocabulary}` in data/vocabulary/words.yaml",
        )


def _listed(words: Iterable[str]) -> str:
    return ", ".join(words) or "none"
