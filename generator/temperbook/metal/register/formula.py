"""What a formula of the register is, and how its inputs are read."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from typing import Any

from temperbook.metal import sections
from temperbook.metal.sections import Section

Outputs = dict[str, float]

SECTION = "section (mm)"
COMPOSITION = 'composition ("Ag 90, Cu 10")'
LISTED = "sizes (mm), with commas between them"


@dataclass(frozen=True)
class Formula:
    """One computation that pages, packs, records and the command may ask for by id.

    inputs, outputs: names with units in words. optional: inputs that may be left out, with what is
    then taken. example: inputs whose outputs `expected` a source or arithmetic gives. series: unit
    of outputs whose names follow from the inputs (an element, size-1), empty where there are none.
    """

    id: str
    label: str
    inputs: Mapping[str, str]
    outputs: Mapping[str, str]
    run: Callable[..., Outputs]
    formula: str
    source: str
    example: Mapping[str, Any]
    expected: Mapping[str, float]
    optional: Mapping[str, Any] = field(default_factory=dict)
    series: str = ""
    note: str = ""

    def unit(self, output: str) -> str:
        """The unit of an output. Errors: KeyError for an output that it never gives."""
        return self.outputs[output] if output in self.outputs or not self.series else self.series


def number(given: Mapping[str, Any], name: str) -> float:
    """An input as a number. Errors: ValueError that names it."""
    try:
        return float(given[name])
    except (TypeError, ValueError):
        raise ValueError(f"{name} is a number, not `{given[name]}`") from None


def share(given: Mapping[str, Any], name: str) -> float:
    """An input in percent as a fraction [1]. Errors: ValueError that names it."""
    return number(given, name) / 100


def from_to(given: Mapping[str, Any]) -> tuple[Section, Section]:
    """The sections `from` and `to`. Errors: ValueError where the section grows."""
    before, after = sections.parse(str(given["from"])), sections.parse(str(given["to"]))
    if after.area > before.area:
        raise ValueError(f"`{after.text}` is larger than `{before.text}`; work takes away")
    return before, after
