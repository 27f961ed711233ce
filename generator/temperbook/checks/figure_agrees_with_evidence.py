"""A figure says what its rows print: same quantity, same metal, same basis, same number after
conversion."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from temperbook import units
from temperbook.checks.statements import Placed, figures
from temperbook.problems import Problem
from temperbook.records import printed
from temperbook.records.evidence import Evidence
from temperbook.records.figures import Figure
from temperbook.records.load import Library
from temperbook.records.vocabulary import Quantity
from temperbook.records.yaml_reader import shown_location

# Words of a row that say "the source does not restrict this"; a chosen figure may be narrower,
# except `of`.
OPEN = {"any", "not-stated"}
Ends = tuple[float | None, float | None]


def check(library: Library) -> Iterator[Problem]:
    """Each figure that was read against each row that it names."""
    for placed, quantity, figure in figures(library):
        known = library.vocabulary.quantities.get(quantity)
        if not known or figure.how in ("computed", "practice", "memory"):
            continue
        rows = placed.rows(library)
        for row in rows:
            yield from _subject(placed, row, library)
            yield from _quantity(placed, quantity, row)
            yield from _basis(placed, figure, row, known)
        whole = len(rows) == len(figure.from_) and figure.well_formed
        if whole and known.numeric and figure.unit == known.unit:
            yield from _number(placed, figure, rows, known)


def _problem(placed: Placed, text: str, found: str, needed: str, mend: str) -> Problem:
    return placed.document.problem(
        placed.at, f"{shown_location(placed.at)} {text}", found=found, needed=needed, mend=mend
    )


def _subject(placed: Placed, row: Evidence, library: Library) -> Iterator[Problem]:
    figure_how = placed.stated.how
    alloy = library.mixed.get(placed.record)
    groups = alloy.subjects if alloy else []
    if row.record == placed.record:
        return
    if figure_how in ("applied", "chosen") and row.record in groups:
        return
    yield _problem(
        placed,
        f"rests on a row about another subject ({row.id})",
        row.record,
        f"a row about {placed.record}"
        + (f", or applied from {', '.join(groups)}" if groups else ""),
        "name the right row; a reading of a system or family is `how: applied`, with `why`",
    )


def _quantity(placed: Placed, quantity: str, row: Evidence) -> Iterator[Problem]:
    if row.quantity != quantity:
        yield _problem(
            placed,
            f"rests on a row of another quantity ({row.id})",
            row.quantity,
            quantity,
            "name the right row, or move the figure",
        )


def _basis(placed: Placed, figure: Figure, row: Evidence, known: Quantity) -> Iterator[Problem]:
    ours, theirs = figure.basis(), row.basis()
    free = figure.how in ("chosen", "applied")
    for key in (*known.needs, *known.allows):
        mine, printed_key = ours.get(key, ""), theirs.get(key, "")
        if mine == printed_key:
            continue
        if (
            key != "of"
            and free
            and (printed_key in OPEN or mine in OPEN or not mine or not printed_key)
        ):
            continue
        yield _problem(
            placed,
            f"has another basis than its row ({row.id})",
            f"{key}: {mine or 'not given'}",
            f"{key}: {printed_key or 'not given'}",
            "take the basis that the source states",
        )


def _number(
    placed: Placed, figure: Figure, rows: list[Evidence], known: Quantity
) -> Iterator[Problem]:
    read = [(row, *_ends(row, figure.unit, known)) for row in rows]
    if not read:
        return
    if figure.how in ("quoted", "converted"):
        for row, low, high in read:
            if figure.how == "quoted" and row.printed_unit != figure.unit:
                yield _problem(
                    placed,
                    f"is printed in another unit ({row.id})",
                    row.printed_unit,
                    figure.unit,
                    "write `how: converted`",
                )
            if not _same(_one(figure.ends, known), (low, high), exact=figure.how == "quoted"):
                yield _problem(
                    placed,
                    f"differs from its row ({row.id})",
                    _ends_text(figure.ends),
                    f"{row.printed_value} {row.printed_unit}",
                    "look at the source; correct the figure or the row",
                )
        return
    ends = [end for _, low, high in read for end in (low, high) if end is not None]
    for end in {e for e in figure.ends if e is not None}:
        if not any(_near(end, e, _slack(end)) for e in ends):
            yield _problem(
                placed,
                "states a number that none of its rows prints",
                f"{end:g}",
                "one of " + ", ".join(f"{e:.4g}" for e in sorted(set(ends))),
                "choose among the readings, or span them",
            )


def _ends(row: Evidence, unit: str, known: Quantity) -> Ends:
    value = printed.parse(row.printed_value)
    if value is None or not units.same_kind(row.printed_unit, unit):
        return None, None
    low, high = (
        None if end is None else units.convert(end, row.printed_unit, unit) for end in value.ends
    )
    return _one((low, high), known)


def _one(ends: Ends, known: Quantity) -> Ends:
    """A bound of a quantity that is itself a limit is that limit's number."""
    low, high = ends
    if known.one_number and (low is None) != (high is None):
        return (high, high) if low is None else (low, low)
    return ends


def _same(ours: Ends, printed_ends: Ends, *, exact: bool) -> bool:
    for mine, theirs in zip(ours, printed_ends, strict=True):
        if (mine is None) != (theirs is None):
            return False
        if mine is not None and theirs is not None:
            slack = 1e-9 * max(1.0, abs(mine)) if exact else _slack(mine)
            if not _near(mine, theirs, slack):
                return False
    return True


def _near(a: float, b: float, slack: float) -> bool:
    return abs(a - b) <= slack


def _slack(value: float) -> float:
    """Half a unit in the last digit of a typed number, and a hair for binary fractions."""
    exponent = Decimal(f"{value:.10g}").as_tuple().exponent
    return 0.5 * 10.0 ** min(0, int(exponent)) * 1.0001


def _ends_text(ends: Ends) -> str:
    low, high = ends
    if low == high:
        return f"{low:g}"
    if low is None:
        return f"at most {high:g}"
    return f"at least {low:g}" if high is None else f"{low:g} to {high:g}"
