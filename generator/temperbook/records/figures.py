"""A figure: one number, range or closed word as the handbook states it, with its provenance."""

from __future__ import annotations

import re
from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field

How = Literal["quoted", "converted", "chosen", "applied", "computed", "practice", "memory"]

# The keys that tell two figures of one quantity apart, in the order in which an address names them.
BASIS_KEYS = (
    "name",
    "element",
    "of",
    "process",
    "form",
    "state",
    "heat",
    "stage",
    "reduction",
)
# Those whose words are closed; the others are numbers, elements or names.
WORDED = ("of", "process", "form", "state", "heat", "stage")

Text = Annotated[str, Field(min_length=1)]


class Strict(BaseModel):
    """Base of all record models: no unknown key, no silent change of type."""

    model_config = ConfigDict(
        strict=True, extra="forbid", frozen=True, populate_by_name=True, defer_build=True
    )


class Provenance(Strict):
    """Where a statement comes from."""

    how: How
    from_: list[Text] = Field(default=[], alias="from")
    why: Text | None = None


class Figure(Provenance):
    """A number or range of one quantity, in one unit, on one basis."""

    value: float | None = None
    low: float | None = None
    high: float | None = None
    unit: Text
    name: Text | None = None
    element: Text | None = None
    of: Text | None = None
    process: Text | None = None
    form: Text | None = None
    state: Text | None = None
    heat: Text | None = None
    stage: Text | None = None
    reduction: float | None = None
    formula: Text | None = None
    inputs: dict[str, Text] = {}
    note: Text | None = None

    @property
    def ends(self) -> tuple[float | None, float | None]:
        """Lower and upper end [unit]; both the same for a single value."""
        return (self.value, self.value) if self.value is not None else (self.low, self.high)

    @property
    def well_formed(self) -> bool:
        """Whether it has a value, or a range or bound, and not both."""
        return (self.value is not None) != (self.low is not None or self.high is not None)

    def basis(self) -> dict[str, str]:
        """The basis keys that are given, as text."""
        given = {key: getattr(self, key) for key in BASIS_KEYS}
        return {key: basis_text(value) for key, value in given.items() if value is not None}


class Rule(Provenance):
    """A closed word that says what to do (how to cool, which pickle)."""

    rule: Text


class Remark(Provenance):
    """One sentence that a bench must know, with its provenance."""

    text: Text


def basis_text(value: str | float) -> str:
    """A basis key's value as an address writes it: `37` and not `37.0`, `dark-red` for `dark
    red`."""
    if isinstance(value, (int, float)):
        return f"{value:g}"
    return re.sub(r"[^0-9a-z.]+", "-", value.lower()).strip("-") if " " in value else value


def address(record: str, quantity: str, basis: dict[str, str]) -> str:
    """`silver/sterling-925#anneal@heat=torch`: the name by which prose and tests call a figure."""
    keys = ",".join(f"{key}={value}" for key, value in basis.items())
    return f"{record}#{quantity}" + (f"@{keys}" if keys else "")
