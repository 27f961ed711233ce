"""What is asked of a plan, and how it is refused."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from temperbook.metal.facts import AlloyFacts
from temperbook.metal.planning.texts import IMPOSSIBLE
from temperbook.metal.register.formula import Said, Value, filled
from temperbook.metal.sections import Section

PROCESSES = ("forge", "groove", "flat", "draw")
STARTS = ("cast", "annealed")
SOFT = "soft"
NEVER_HEATED = "none"  # the rule of metal that no bench anneals
__all__ = [
    "NEVER_HEATED",
    "PROCESSES",
    "SOFT",
    "STARTS",
    "Equipment",
    "Impossible",
    "Request",
    "Said",
    "hold_planned",
]


class Impossible(ValueError):
    """A plan that cannot be made; its sentence tells why and what would do."""

    def __init__(self, reason: str, **values: Value) -> None:
        self.said = Said(reason, values)
        super().__init__(filled(IMPOSSIBLE[reason], values))


def hold_planned(facts: AlloyFacts) -> None:
    """Refuses metal that no plan divides. Errors: Impossible: not worked cold, never annealed."""
    if not facts.cold:
        raise Impossible("not-worked-cold", alloy=facts.name)
    if facts.heating and facts.heating.rule == NEVER_HEATED:
        raise Impossible("needs-no-anneal", alloy=facts.name)


@dataclass(frozen=True)
class Equipment:
    """Mill and plate, and what a workshop loses: its own settings.

    roll_diameter [mm], friction [1] of the rolls, per_pass [1] of the area by process, holes [mm]
    of a plate (none: any size), crop, scalp, trim, loss [1]. given: names of those that were typed
    and not taken from the settings.
    """

    roll_diameter: float
    friction: float
    per_pass: Mapping[str, float]
    crop: float
    scalp: float
    trim: float
    loss: float
    holes: tuple[float, ...] = ()
    given: tuple[str, ...] = ()


@dataclass(frozen=True)
class Request:
    """From a section to another, and what shall hold on the way.

    state: cast | annealed. temper: a word of temper, `soft`, or empty. last: area reduction [1] of
    the last run. ceiling, floor and those of the first run: area reductions [1] in the place of
    the alloy's own. process: one of PROCESSES or empty. length: of the end [mm]. mass: of the end
    [g]. more: anneals beyond the fewest.
    """

    start: Section
    end: Section
    state: str = "annealed"
    temper: str = ""
    last: float | None = None
    ceiling: float | None = None
    first_ceiling: float | None = None
    floor: float | None = None
    first_floor: float | None = None
    process: str = ""
    length: float | None = None
    mass: float | None = None
    more: int = 0
