"""Figures, sources, words and alloys as rows and plain data for others: nothing is rounded."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from typing import Any

from temperbook.derive import grades
from temperbook.derive.handbook import Called, Handbook, statements
from temperbook.records.figures import Provenance, Remark
from temperbook.records.load import Library
from temperbook.records.models import RULES, Alloy, Solder, Source
from temperbook.views import formatting

Row = Sequence[Any]
FIGURE = (
    "address",
    "record",
    "quantity",
    "value",
    "low",
    "high",
    "unit",
    "of",
    "process",
    "form",
    "state",
    "how",
    "from",
    "grade",
)
SOURCE = ("id", "title", "by", "year", "kind", "link", "read", "note")
QUANTITY = ("quantity", "label", "unit", "needs", "allows", "meaning")
WORD = ("vocabulary", "word", "label", "meaning")
# Every file that is offered, and what is in it.
OFFERED = {
    "figures.csv": "every figure as we state it",
    "evidence.csv": "every row as its source prints it",
    "sources.csv": "every work",
    "alloys.json": "each alloy with all provenance",
    "solders.json": "each solder likewise",
    "faults.json": "each fault: causes, checks, remedies",
    "cautions.json": "each caution, and what carries it",
    "quantities.csv": "what each quantity means",
    "words.csv": "the closed words",
    "datapackage.json": "a description of every column",
}
BETWEEN = " "  # between the ids of several rows in one cell


def figure_row(library: Library) -> Callable[[Called], Row]:
    """How a figure becomes a row of figures.csv."""

    def row(called: Called) -> Row:
        figure = called.figure
        basis = (figure.of, figure.process, figure.form, figure.state)
        return [
            called.address,
            called.record,
            called.quantity,
            *(_plain(end) for end in (figure.value, figure.low, figure.high)),
            figure.unit,
            *(word or "" for word in basis),
            figure.how,
            BETWEEN.join(figure.from_),
            grades.best(figure.from_, library),
        ]

    return row


def source_row(source: Source) -> Row:
    """A source as a row of sources.csv."""
    given = (getattr(source, column) for column in SOURCE)
    return ["" if value is None else value for value in given]


def quantities(library: Library) -> Iterator[Row]:
    """The dictionary of quantities."""
    for name, quantity in library.vocabulary.quantities.items():
        needs, allows = BETWEEN.join(quantity.needs), BETWEEN.join(quantity.allows)
        yield [name, quantity.label, quantity.unit, needs, allows, quantity.meaning]


def words(library: Library) -> Iterator[Row]:
    """The closed words of every basis key, and those of quantities that are words."""
    for vocabulary, entries in library.vocabulary.words.items():
        for word, said in entries.items():
            yield [vocabulary, word, said.label, said.meaning or ""]
    for name, quantity in library.vocabulary.quantities.items():
        for word, label in quantity.words.items():
            yield [name, word, label, ""]


def alloy(record: Alloy, handbook: Handbook) -> dict[str, Any]:
    """An alloy with every figure and statement, each with its whole provenance."""
    library = handbook.library
    stated = {
        place: provenance_of(said, library)
        for place, said in statements(record)
        if place != "remarks"
    }
    return {
        "id": record.id,
        "name": record.name,
        "also": list(record.also),
        "about": record.about,
        "melt": record.melt,
        "worked": record.worked,
        "composition": dict(record.composition),
        "composition_source": stated["composition"],
        "subjects": list(record.subjects),
        "figures": figures_of(record.id, handbook),
        **{key: _rule(record, key, stated) for key in RULES},
        "remarks": remarks_of(record.remarks, library),
        "cautions": [caution.id for caution in handbook.cautions_of[record.id]],
    }


def solder(record: Solder, handbook: Handbook) -> dict[str, Any]:
    """A solder with every figure and statement, each with its whole provenance."""
    library = handbook.library
    return {
        "id": record.id,
        "name": record.name,
        "also": list(record.also),
        "about": record.about,
        "melt": record.melt,
        "composition": dict(record.composition),
        "composition_source": provenance_of(record.composition_source, library),
        "joins": list(record.joins),
        "figures": figures_of(record.id, handbook),
        "remarks": remarks_of(record.remarks, library),
        "cautions": [caution.id for caution in handbook.cautions_of[record.id]],
    }


def figures_of(record_id: str, handbook: Handbook) -> list[dict[str, Any]]:
    """The figures of a record, each with its whole provenance."""
    found = (called for called in handbook.figures.values() if called.record == record_id)
    return [_figure(called, handbook.library) for called in found]


def remarks_of(remarks: list[Remark], library: Library) -> list[dict[str, Any]]:
    """Remarks, each with its whole provenance."""
    return [{"text": remark.text, **provenance_of(remark, library)} for remark in remarks]


def _figure(called: Called, library: Library) -> dict[str, Any]:
    figure = called.figure
    found: dict[str, Any] = {"address": called.address, "quantity": called.quantity}
    for key in ("value", "low", "high"):
        if getattr(figure, key) is not None:
            found[key] = getattr(figure, key)
    found |= {"unit": figure.unit, "basis": figure.basis()}
    if figure.formula:
        found |= {"formula": figure.formula, "inputs": dict(figure.inputs)}
    return {
        **found,
        **provenance_of(figure, library),
        "grade": grades.best(figure.from_, library) or None,
    }


def _rule(record: Alloy, key: str, stated: dict[str, Any]) -> dict[str, Any] | None:
    rule = getattr(record, key)
    return {"rule": rule.rule, **stated[key]} if rule else None


def provenance_of(said: Provenance, library: Library) -> dict[str, Any]:
    """Where a statement comes from: how, rows, sources, why."""
    return {
        "how": said.how,
        "from": list(said.from_),
        "sources": list(formatting.sources_of(said.from_, library)),
        "why": said.why,
    }


def _plain(value: float | None) -> str:
    """A number as the record has it, whole where it is whole; empty for none."""
    if value is None:
        return ""
    return str(int(value)) if value == int(value) and abs(value) < 1e15 else repr(value)
