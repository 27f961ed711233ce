"""Reads what is given to a formula: names, groups of alternatives, and each input by its kind."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from typing import Any

from temperbook.metal import compositions, sections
from temperbook.metal.register.formula import Formula, Input, Tables, listed

MOST = 1e308  # beyond it no number can be computed with

_PLAIN = re.compile(r"[-+]?(\d+(\.\d*)?|\.\d+)", re.ASCII)


def given(formula: Formula, inputs: Mapping[str, Any], tables: Tables) -> dict[str, Any]:
    """The inputs as `run` takes them: checked, read, with what is taken for those left out.

    Errors: ValueError with what is allowed.
    """
    here = {name: value for name, value in inputs.items() if value is not None}
    _hold_names(formula, here)
    read = {}
    for name, declared in formula.inputs.items():
        value = here.get(name, declared.default)
        if value is not None:
            read[name] = _read(name, declared, value, tables)
    return read


def usage(formula: Formula) -> str:
    """`section, length, one of (alloy | density), [thickness]`: what a formula takes."""
    grouped = formula.grouped()
    may = [f"[{n}]" for n, i in formula.inputs.items() if i.open and n not in grouped]
    return ", ".join([*formula.needed(), *map(_one_of, formula.groups), *may])


def _one_of(group: tuple[tuple[str, ...], ...]) -> str:
    return f"one of ({' | '.join(' and '.join(alternative) for alternative in group)})"


def _hold_names(formula: Formula, here: Mapping[str, Any]) -> None:
    missing = [name for name in formula.needed() if name not in here]
    unknown = [name for name in here if name not in formula.inputs]
    due = [group for group in formula.groups if not _kept(group, here)]
    if missing or unknown or due:
        raise ValueError(
            f"`{formula.id}` takes {usage(formula)}"
            + (f"; missing: {', '.join(missing)}" if missing else "")
            + (f"; needed: {', '.join(map(_one_of, due))}" if due else "")
            + (f"; unknown: {', '.join(unknown)}" if unknown else "")
        )


def _kept(group: tuple[tuple[str, ...], ...], here: Mapping[str, Any]) -> bool:
    names = {name for alternative in group for name in alternative}
    return (names & here.keys()) in [set(alternative) for alternative in group]


def _read(name: str, declared: Input, value: Any, tables: Tables) -> Any:
    if declared.kind == "alloy":
        return alloy(str(value), tables)
    if declared.kind == "section":
        return sections.parse(str(value))
    if declared.kind == "composition":
        return compositions.parse(value if isinstance(value, Mapping) else str(value))
    if declared.kind == "choice":
        return _choice(name, declared, value)
    readers: dict[str, Callable[[str, Any], Any]] = {
        "number": number,
        "list": _sizes,
        "flag": _flag,
        "name": _name,
    }
    return readers[declared.kind](name, value)


def number(name: str, value: Any) -> float:
    """A number given as such or as text. Errors: ValueError that names the input."""
    if isinstance(value, str):
        if not _PLAIN.fullmatch(value.strip()):
            raise ValueError(f"{name} is a plain number such as 1.5, not `{value}`")
        value = float(value)
    if isinstance(value, bool) or not isinstance(value, int | float) or not abs(value) < MOST:
        raise ValueError(f"{name} is a plain finite number")
    return float(value)


def alloy(value: str, tables: Tables) -> str:
    """The id of an alloy of the tables. Errors: ValueError for none."""
    if value not in tables.get("alloys", {}):
        raise ValueError(f"`{value}` is not the name of one alloy")
    return value


def _choice(name: str, declared: Input, value: Any) -> str:
    if value not in declared.choices:
        raise ValueError(f"{name} is {listed(list(declared.choices))}, not `{value}`")
    return str(value)


def _sizes(name: str, value: Any) -> list[float]:
    if isinstance(value, str):
        parts: list[Any] = [part for part in value.split(",") if part.strip()]
    else:
        parts = list(value) if isinstance(value, list | tuple) else [value]
    try:
        return [number(name, part) for part in parts]
    except ValueError:
        said = value if isinstance(value, str) else ", ".join(map(str, parts))
        raise ValueError(f"{name} are sizes with commas between them, not `{said}`") from None


def _flag(name: str, value: Any) -> bool:
    truth = value if isinstance(value, bool) else {"true": True, "false": False}.get(str(value))
    if truth is None:
        raise ValueError(f"{name} is true or false, not `{value}`")
    return truth


def _name(name: str, value: Any) -> str:
    return value.strip() if isinstance(value, str) else f"{number(name, value):g}"
