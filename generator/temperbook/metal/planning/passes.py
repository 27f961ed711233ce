"""The passes of a run: each step through groove, rolls or drawplate."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from temperbook.metal import drawing, rolling
from temperbook.metal.planning import path
from temperbook.metal.planning.asked import Equipment, Impossible
from temperbook.metal.sections import Section

MOST = 400  # passes of one run; more than that is a slip in the settings


@dataclass(frozen=True)
class Pass:
    """One pass: the section behind it, and the work [1] done since the anneal."""

    section: Section
    strain: float


def of_run(
    start: Section, end: Section, process: str, equipment: Equipment, per_pass: float
) -> list[Pass]:
    """The fewest passes of a run; none for forging, which has no passes of a size.

    per_pass: area reduction [1] of one. Valid for: equal reductions; in flat rolling each pass is
    held to the bite of the rolls as well, and all are lightened alike until they end at the size.
    Errors: Impossible where the passes would be too many to be meant.
    """
    total = path.work(start, end)
    if process == "forge" or total <= 0:
        return []
    most = -math.log(1 - per_pass)
    draft = rolling.max_draft(equipment.roll_diameter / 2, equipment.friction)
    if process != "flat" or draft >= start.thickness * per_pass:
        number = max(1, math.ceil(total / most - 1e-9))
        _hold_number(number)
        shares = [step / number for step in range(1, number + 1)]
    else:
        shares = _bitten_shares(start.thickness, end.thickness, most, draft)
    return [Pass(path.at(start, end, share), total * share) for share in shares]


def _bitten_shares(before: float, after: float, most: float, draft: float) -> list[float]:
    """Shares [1] of the work after each pass, from a thickness [mm] to another.

    most: work [1] of a pass. draft: what the rolls bite [mm]. Formula: both limits times one
    factor, found by halving, so that the last pass ends at the thickness.
    """
    number = len(_thicknesses(before, after, most, draft))
    _hold_number(number)
    low, high = 0.0, 1.0
    for _ in range(60):
        middle = (low + high) / 2
        if _after(before, number, middle * most, middle * draft) > after:
            low = middle
        else:
            high = middle
    whole = math.log(before / after)
    shares = []
    thickness = before
    for _ in range(number):
        thickness = _next(thickness, high * most, high * draft)
        shares.append(math.log(before / thickness) / whole)
    return [*shares[:-1], 1.0]


def _thicknesses(before: float, after: float, most: float, draft: float) -> list[float]:
    found: list[float] = []
    thickness = before
    while thickness > after * (1 + 1e-9) and len(found) <= MOST:
        thickness = _next(thickness, most, draft)
        found.append(thickness)
    return found


def _after(before: float, number: int, most: float, draft: float) -> float:
    for _ in range(number):
        before = _next(before, most, draft)
    return before


def _next(thickness: float, most: float, draft: float) -> float:
    return max(thickness * math.exp(-most), thickness - draft)


def _hold_number(number: int) -> None:
    if number > MOST:
        raise Impossible("too-many-passes", number=number)


def through_holes(start: Section, sizes: Sequence[float], per_draw: float) -> list[Pass]:
    """The fewest draws of a run through the holes of a plate [mm], the last of them its end."""
    chosen = drawing.schedule_by_holes(as_round(start), sizes[-1], per_draw, sizes)
    sections = [Section("round", size, size) for size in chosen]
    return [Pass(section, path.work(start, section)) for section in sections]


def as_round(section: Section) -> float:
    """The diameter [mm] of a round with a section's area: a square's corners come off first."""
    if section.shape == "round":
        return section.thickness
    return math.sqrt(section.area * 4 / math.pi)


def bitten(start: Section, equipment: Equipment, per_pass: float) -> bool:
    """Whether the bite of the rolls, and not the limit of a pass [1], sets the first passes."""
    draft = rolling.max_draft(equipment.roll_diameter / 2, equipment.friction)
    return draft < start.thickness * per_pass
