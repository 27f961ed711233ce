"""Figures and readings as rows of a page: grouped by what they are about, each with its
provenance."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from temperbook.derive import grades, side_by_side
from temperbook.derive.handbook import Handbook
from temperbook.records.evidence import Evidence
from temperbook.records.figures import Figure, address
from temperbook.views import formatting, routes
from temperbook.views.pages import Link, source_link


@dataclass(frozen=True)
class FigureRow:
    """One adopted figure."""

    label: str
    anchor: str
    text: str
    basis: str
    mark: str
    how: str
    why: str
    note: str
    sources: list[Link]
    grade: str


@dataclass(frozen=True)
class Group:
    """Figures that belong together."""

    title: str
    rows: list[FigureRow]


@dataclass(frozen=True)
class Reading:
    """One row of evidence as its source prints it; `adopted` says whether a figure rests on it."""

    quantity: str
    printed: str
    worded: bool
    basis: str
    about: str
    conditions: str
    source: Link
    locator: str
    grade: str
    note: str
    adopted: bool


def groups(record: str, figures: Mapping[str, list[Figure]], handbook: Handbook) -> list[Group]:
    """A record's figures in the order of the vocabulary's groups."""
    words = handbook.library.vocabulary
    found: dict[str, list[FigureRow]] = {}
    for quantity_id, quantity in words.quantities.items():
        for figure in figures.get(quantity_id, []):
            found.setdefault(quantity.group, []).append(row(record, quantity_id, figure, handbook))
    return [Group(words.label("group", g), found[g]) for g in words.words["group"] if g in found]


def row(record: str, quantity_id: str, figure: Figure, handbook: Handbook) -> FigureRow:
    """One figure as a row."""
    library = handbook.library
    shown = formatting.shown(figure, quantity_id, library)
    return FigureRow(
        label=library.vocabulary.quantities[quantity_id].label,
        anchor=routes.anchor(address(record, quantity_id, figure.basis())),
        text=shown.text,
        basis=shown.basis,
        mark=shown.mark,
        how=shown.how + _formula(figure),
        why=shown.why,
        note=figure.note or "",
        sources=[source_link(s, handbook) for s in shown.sources],
        grade=standing(figure.from_, handbook),
    )


def _formula(figure: Figure) -> str:
    if figure.how != "computed":
        return ""
    return f": {figure.formula} from " + ", ".join(f"{k} {v}" for k, v in figure.inputs.items())


def standing(rows: list[str], handbook: Handbook) -> str:
    """What kind of source the best of some rows has, and whether the work itself was read.

    Empty without rows.
    """
    best = grades.best_row(rows, handbook.library)
    if not best:
        return ""
    words = handbook.library.vocabulary
    source = handbook.library.sources[handbook.library.evidence[best].source]
    return f"{words.label('source-kind', source.kind)}, {words.label('read', source.read)}"


def readings(rows: list[Evidence], handbook: Handbook, about: str = "") -> list[Reading]:
    """Evidence rows in the order of the vocabulary; `about` is the record whose page shows them."""
    order = list(handbook.library.vocabulary.quantities)
    ranked = sorted(rows, key=lambda r: (r.record != about, order.index(r.quantity), r.id))
    return [_reading(r, handbook, about) for r in ranked]


def _reading(row: Evidence, handbook: Handbook, about: str) -> Reading:
    library = handbook.library
    quantity = library.vocabulary.quantities[row.quantity]
    said = formatting.printed_text(row) if quantity.numeric else _worded(row, quantity.words)
    return Reading(
        quantity=quantity.label,
        printed=said,
        worded=not quantity.numeric,
        basis=formatting.basis(row, library.vocabulary),
        about="" if row.record == about else handbook.name_of(row.record),
        conditions=row.conditions,
        source=source_link(row.source, handbook),
        locator=row.locator,
        grade=library.vocabulary.label("grade", row.grade),
        note=row.note,
        adopted=row.id in handbook.rests_on,
    )


def _worded(row: Evidence, words: Mapping[str, str]) -> str:
    said = words.get(row.word, row.word)
    return (
        f"{said} ({row.printed_value})" if said and row.printed_value else said or row.printed_value
    )


@dataclass(frozen=True)
class SpreadRow:
    """How far the readings of a quantity on one basis lie apart."""

    quantity: str
    basis: str
    text: str
    readings: int
    sources: int


def spreads(rows: list[Evidence], handbook: Handbook) -> list[SpreadRow]:
    """The spread of every quantity that two sources or more give."""
    words = handbook.library.vocabulary
    found = []
    for spread in side_by_side.spreads(rows, words):
        known = words.quantities[spread.quantity]
        ends = formatting.ends((spread.low, spread.high), known.decimals)
        text = formatting.with_unit(ends, known.unit)
        basis = formatting.basis(spread.example, words, only=side_by_side.SAME)
        found.append(SpreadRow(known.label, basis, text, spread.readings, spread.sources))
    return found
