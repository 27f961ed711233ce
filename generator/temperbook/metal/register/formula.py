"""What a formula of the register is: its inputs, its outputs, and what it says beside them."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from typing import Any, Literal

Kind = Literal["number", "section", "composition", "choice", "alloy", "list", "flag", "name"]
Value = float | str
Output = float | str | bool | dict[str, str]
Given = Mapping[str, Any]
Tables = Mapping[str, Any]
Alternative = tuple[str, ...]

# Outputs that are no numbers.
TEXT, FLAG, NAMES = "text", "flag", "names"

_SLOT = re.compile(r"\{([a-z0-9-]+)(?::(?:\.(\d)f|(g)))?\}")


@dataclass(frozen=True)
class Input:
    """One input of a formula.

    kind: how it is read (register/reading.py). label: plain words for a form. unit: of a number.
    choices: words of a choice. choices_of: table and key that hold the words of a name. default:
    what is taken where it is left out. optional: whether it may be left out and is then absent.
    """

    kind: Kind
    label: str
    unit: str = ""
    choices: tuple[str, ...] = ()
    choices_of: str = ""
    default: Any = None
    optional: bool = False

    @property
    def open(self) -> bool:
        """Whether it may be left out."""
        return self.optional or self.default is not None


@dataclass(frozen=True)
class Said:
    """A note: the id of its template and the values that fill it."""

    id: str
    values: Mapping[str, Value] = field(default_factory=dict)


@dataclass(frozen=True)
class Answer:
    """What a formula answers: outputs by name, notes, and units that hang on the answer."""

    outputs: dict[str, Any]
    notes: tuple[Said, ...] = ()
    units: Mapping[str, str] = field(default_factory=dict)


@dataclass(frozen=True)
class Formula:
    """One computation that pages, packs, records and the command may ask for by id.

    outputs: names with units. groups: of each group exactly the inputs of one alternative are
    given. example: inputs whose outputs `expected` a source or arithmetic gives, with the tables
    that it was made for. series: unit of outputs whose names follow from the inputs (an element,
    size-1). note: a sentence that is always said. notes: templates of those that an answer may
    say. tables: names of the data tables that `run` reads (derive/tables.py).
    """

    id: str
    label: str
    inputs: Mapping[str, Input]
    outputs: Mapping[str, str]
    run: Callable[[Given, Tables], Answer]
    formula: str
    source: str
    example: Mapping[str, Any]
    expected: Mapping[str, Any]
    groups: tuple[tuple[Alternative, ...], ...] = ()
    series: str = ""
    note: str = ""
    notes: Mapping[str, str] = field(default_factory=dict)
    tables: tuple[str, ...] = ()
    example_tables: Mapping[str, Any] = field(default_factory=dict)

    def unit(self, output: str) -> str:
        """The unit of an output. Errors: KeyError for an output that it never gives."""
        return self.outputs[output] if output in self.outputs or not self.series else self.series

    def unit_in(self, output: str, answer: Answer) -> str:
        """The unit of an output as this answer gives it."""
        return answer.units.get(output) or self.unit(output)

    def grouped(self) -> set[str]:
        """The inputs that stand in a group."""
        return {name for group in self.groups for alternative in group for name in alternative}

    def needed(self) -> list[str]:
        """The inputs that are always needed."""
        grouped = self.grouped()
        return [n for n, i in self.inputs.items() if not i.open and n not in grouped]

    def said(self, answer: Answer) -> list[tuple[str, str]]:
        """Id and sentence of each note of an answer, the fixed one first."""
        fixed = [("formula", self.note)] if self.note else []
        return [*fixed, *((s.id, filled(self.notes[s.id], s.values)) for s in answer.notes)]


def filled(template: str, values: Mapping[str, Value]) -> str:
    """A template with its values: `{x}` for a text, `{x:.1f}` and `{x:g}` for a number.

    Errors: KeyError for a value that is missing, TypeError for a number where a text is due.
    """

    def word(match: re.Match[str]) -> str:
        value, decimals, general = values[match[1]], match[2], match[3]
        if decimals is None and general is None:
            if not isinstance(value, str):
                raise TypeError(f"{match[1]} is no text")
            return value
        return f"{value:.{decimals}f}" if decimals else f"{value:g}"

    return _SLOT.sub(word, template)


def listed(words: list[str], last: str = "or") -> str:
    """`a, b or c`."""
    return f" {last} ".join([", ".join(words[:-1]), words[-1]]) if len(words) > 1 else words[0]
