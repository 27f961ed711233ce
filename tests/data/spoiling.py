"""Puts one slip at a time into adopted figures and the rows behind them, and counts what is caught.

A slip is what a typist makes: one digit, one basis word, one id, one unit, one sign. Caught means
that `temperbook check` would report it or a test of tests/data fails. Run it by hand:

    python -m tests.data.spoiling 1000 [seed]
"""

from __future__ import annotations

import inspect
import itertools
import random
import sys
from collections import Counter
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, replace
from typing import Any

from temperbook import checks, paths, units
from temperbook.derive.handbook import derive
from temperbook.problems import Problem
from temperbook.records import link, validate, validate_rows
from temperbook.records.evidence import Evidence
from temperbook.records.figures import WORDED, Figure
from temperbook.records.load import Library, load

KINDS = ("digit", "basis", "id", "unit", "sign")
BASES = ("name", "element", "of", "process", "form", "state", "heat", "stage", "reduction")


@dataclass(frozen=True)
class Slip:
    """A slip: its kind, the side that it is on (figure or row), where, and the spoiled library."""

    kind: str
    side: str
    place: str
    how: str
    library: Library
    row: Evidence | None = None


def slips(library: Library, count: int, seed: int) -> Iterator[Slip]:
    """So many slips, the same for one seed, kinds and sides in turn, at places at random."""
    chance = random.Random(seed)
    adopted = [
        (record, quantity, position, figure)
        for record, quantity, position, figure in library.placed_figures()
        if figure.from_
    ]
    turns = itertools.cycle(itertools.product(KINDS, ("figure", "row")))
    made = 0
    while made < count:
        kind, side = next(turns)
        for _ in range(200):
            record, quantity, position, figure = chance.choice(adopted)
            known = library.vocabulary.quantities[quantity]
            if side == "figure":
                spoiled = _figure(figure, kind, known, library, chance)
                if spoiled is not None and spoiled != figure:
                    place = f"{record}#{quantity}[{position}]"
                    new = with_figure(library, record, quantity, position, spoiled)
                    yield Slip(kind, side, place, figure.how, new)
                    break
            else:
                row = library.evidence[chance.choice(figure.from_)]
                changed = _row(row, kind, known, library, chance)
                if changed is not None and changed != row:
                    new = with_row(library, row.id, changed)
                    yield Slip(kind, side, row.id, figure.how, new, changed)
                    break
        made += 1


def with_figure(
    library: Library, record_id: str, quantity: str, position: int, figure: Figure
) -> Library:
    """The library with one figure exchanged."""
    kind = library.kind_of(record_id)
    record: Any = library.records[kind][record_id]
    figures = list(record.figures[quantity])
    figures[position] = figure
    changed = record.model_copy(update={"figures": {**record.figures, quantity: figures}})
    records = {**library.records, kind: {**library.records[kind], record_id: changed}}
    return replace(library, records=records, lost_rows=set())


def with_row(library: Library, row_id: str, row: Evidence) -> Library:
    """The library with one row exchanged; under its new id, where that is what was spoiled."""
    rows = {}
    for other, found in library.evidence.items():
        if other != row_id:
            rows[other] = found
        elif row.id not in library.evidence or row.id == row_id:
            rows[row.id] = row
    return replace(library, evidence=rows, lost_rows=set())


def _figure(
    figure: Figure, kind: str, known: Any, library: Library, chance: random.Random
) -> Figure | None:
    numbers = [key for key in ("value", "low", "high") if getattr(figure, key) is not None]
    key = chance.choice(numbers)
    number = getattr(figure, key)
    if kind == "digit":
        return figure.model_copy(update={key: float(_digit(f"{number:.10g}", chance))})
    if kind == "sign":
        return figure.model_copy(update={key: -number}) if number else None
    if kind == "unit":
        return figure.model_copy(update={"unit": _unit(figure.unit, chance)})
    if kind == "id":
        position = chance.randrange(len(figure.from_))
        rows = list(figure.from_)
        rows[position] = _renumbered(rows[position], chance)
        return figure.model_copy(update={"from_": rows})
    found = _basis(figure, known, library, chance)
    return figure.model_copy(update=dict([found])) if found else None


def _row(
    row: Evidence, kind: str, known: Any, library: Library, chance: random.Random
) -> Evidence | None:
    if not known.numeric and kind in ("digit", "unit", "sign"):
        return None
    if kind == "digit":
        return replace(row, printed_value=_digit(row.printed_value, chance))
    if kind == "sign":
        return replace(row, printed_value=f"-{row.printed_value}")
    if kind == "unit":
        return replace(row, printed_unit=_unit(row.printed_unit, chance))
    if kind == "id":
        if chance.random() < 0.5:
            return replace(row, id=_renumbered(row.id, chance))
        others = [r for kinds in ("alloys", "subjects", "elements") for r in library.records[kinds]]
        return replace(row, record=chance.choice(sorted(set(others) - {row.record})))
    found = _basis(row, known, library, chance)
    return replace(row, **{found[0]: str(found[1] or "")}) if found else None


def _digit(text: str, chance: random.Random) -> str:
    places = [n for n, letter in enumerate(text) if letter.isdigit()]
    if not places:
        return text
    at = chance.choice(places)
    return text[:at] + chance.choice([d for d in "0123456789" if d != text[at]]) + text[at + 1 :]


def _renumbered(row_id: str, chance: random.Random) -> str:
    stem, _, number = row_id.rpartition(".")
    return f"{stem}.{_digit(number, chance)}"


def _unit(unit: str, chance: random.Random) -> str:
    return chance.choice(sorted(set(units.PINT_NAMES) - {unit}))


def _basis(
    of: Figure | Evidence, known: Any, library: Library, chance: random.Random
) -> tuple[str, Any] | None:
    """A basis key that is given, with another word; one that is left out, where none is given."""
    possible = [key for key in BASES if key in (*known.needs, *known.allows)]
    given = [key for key in possible if getattr(of, key) not in (None, "")]
    keys = given or [key for key in possible if key in WORDED]
    if not keys:
        return None
    key = chance.choice(keys)
    now = getattr(of, key)
    if key in WORDED:
        return key, chance.choice(sorted(set(library.vocabulary.words[key]) - {now}))
    if key == "reduction":
        return key, float(_digit(f"{float(now):g}", chance))
    if key == "element":
        return key, chance.choice(sorted(set(library.elements) - {now}))
    return key, f"{now} of another"


# -- what catches a slip


def caught_by_check(library: Library, row: Evidence | None = None) -> bool:
    """Whether `temperbook check` would report it; the quickest of its parts are asked first.

    row: the row that was spoiled; the others are as they were.
    """
    parts: Iterator[Iterable[Problem]] = (
        made
        for part in (
            [validate_rows.problems(row, library.vocabulary)] if row else [],
            (rule.check(library) for rule in checks.RULES),
            (find(library) for find in (validate.problems, link.problems)),
        )
        for made in part
    )
    return any(next(iter(found), None) is not None for found in parts)


def caught_by_tests(library: Library) -> str:
    """The first test of tests/data (and of the outliers) that fails; empty for none."""
    try:
        handbook = derive(library)
    except (ValueError, KeyError, AssertionError):
        return "derive"
    given = {"library": library, "handbook": handbook}
    for name, test, values in _tests():
        needed = {key: given[key] for key in given if key in inspect.signature(test).parameters}
        try:
            test(**needed, **values)
        except Exception:  # an error in a test is a failure of it
            return name
    return ""


def _tests() -> Iterator[tuple[str, Callable[..., None], dict[str, Any]]]:
    """Every test that needs the records alone, with each set of its parameters."""
    for module in _modules():
        for name, test in vars(module).items():
            if not name.startswith("test_") or not callable(test):
                continue
            marks = [m for m in getattr(test, "pytestmark", []) if m.name == "parametrize"]
            sets = [[_values(mark.args[0], one) for one in mark.args[1]] for mark in marks]
            values = [{k: v for part in parts for k, v in part.items()} for parts in _all(sets)]
            known = {"library", "handbook", *(values[0] if values else ())}
            if set(inspect.signature(test).parameters) <= known:
                yield from ((name, test, one) for one in values)


def _modules() -> list[Any]:
    import importlib
    from pathlib import Path

    here = Path(__file__).parent
    names = [f"tests.data.{p.stem}" for p in sorted(here.glob("test_*.py"))]
    names = [name for name in names if not name.endswith("test_slips")]
    return [importlib.import_module(name) for name in [*names, "tests.derive.test_outliers"]]


def _all(sets: list[list[dict[str, Any]]]) -> Iterator[tuple[dict[str, Any], ...]]:
    yield from itertools.product(*sets)


def _values(names: Any, one: Any) -> dict[str, Any]:
    keys = [n.strip() for n in names.split(",")] if isinstance(names, str) else list(names)
    given = getattr(one, "values", one)
    values = [given] if len(keys) == 1 and not hasattr(one, "values") else list(given)
    return dict(zip(keys, values, strict=True))


def counted(library: Library, count: int, seed: int) -> tuple[Counter[str], list[Slip]]:
    """How many slips each guard caught, and those that escaped."""
    caught: Counter[str] = Counter()
    escaped = []
    for slip in slips(library, count, seed):
        if caught_by_check(slip.library, slip.row):
            caught["check"] += 1
        elif name := caught_by_tests(slip.library):
            caught[name] += 1
        else:
            escaped.append(slip)
    return caught, escaped


def main() -> None:
    """Counts slips and prints what escaped."""
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 60
    seed = int(sys.argv[2]) if len(sys.argv) > 2 else 1
    library, problems = load(paths.project())
    assert not problems
    assert not caught_by_check(library)
    assert not caught_by_tests(library)
    caught, escaped = counted(library, count, seed)
    print(f"{count - len(escaped)} of {count} caught ({100 * (1 - len(escaped) / count):.1f} %)")
    for name, number in caught.most_common():
        print(f"  {number:>5}  {name}")
    classes = Counter((s.kind, s.side, s.how) for s in escaped)
    for (kind, side, how), number in classes.most_common():
        print(f"  {number:>5}  escaped: {kind} in a {side}, figure {how}")
    for slip in escaped[:40]:
        print(f"         {slip.kind} {slip.side} {slip.place}")


if __name__ == "__main__":
    main()
