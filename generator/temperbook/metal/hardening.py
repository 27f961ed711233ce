"""How hard metal is after cold work, from an alloy's own table: never beyond its ends."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from temperbook.metal.facts import AlloyFacts, Known

SCALES = ("hardness", "hardness-brinell", "hardness-strip")
# Which forms of a record's table serve for stock that is flat, or wire.
FORMS = {"flat": ("sheet", "strip"), "wire": ("wire",)}
# Tempers in the order of their hardness; a word that stands in none has no table.
TEMPERS = (
    "quarter-hard",
    "half-hard",
    "three-quarter-hard",
    "hard",
    "extra-hard",
    "spring",
    "extra-spring",
)


@dataclass(frozen=True)
class Point:
    """A point of a table: work since the anneal [1], the hardness there, and its temper."""

    strain: float
    low: float
    high: float
    state: str
    known: Known


@dataclass(frozen=True)
class Curve:
    """Hardness over work for one form and scale, from annealed metal to the table's end."""

    quantity: str
    unit: str
    form: str
    points: tuple[Point, ...]

    @property
    def most(self) -> float:
        """Work [1] at the end of the table."""
        return self.points[-1].strain


@dataclass(frozen=True)
class Hardness:
    """A range of hardness [unit] and the figures that it lies between."""

    low: float
    high: float
    unit: str
    quantity: str
    between: tuple[Known, ...]


def strain_on(percent: float, of: str, stock: str) -> float | None:
    """Work [1] of a reduction [percent] on a basis; None where the basis leaves it open.

    stock: flat | wire. Valid for: a flat without spread, where a basis that is not stated is the
    same number; a wire's must be stated.
    """
    share = percent / 100
    if not 0 <= share < 1 or (of == "not-stated" and stock == "wire"):
        return None
    return -math.log(1 - share) * (2 if of == "diameter" else 1)


def curve(facts: AlloyFacts, stock: str) -> Curve | None:
    """The alloy's table for a stock (flat | wire): the scale with most points, annealed first.

    None where no table of this form has a worked point beside an annealed one.
    """
    found = [
        c
        for scale in SCALES
        for form in (*FORMS[stock], "")
        if (c := _of(facts, scale, form, stock))
    ]
    return max(found, key=lambda c: len(c.points), default=None)


def of_scale(facts: AlloyFacts, scale: str, stock: str) -> Curve | None:
    """The alloy's table of one scale (a quantity) for a stock; by tempers where it has no other.

    Valid for: hardness scales and tensile strength; None where no worked point stands beside an
    annealed one.
    """
    own = [c for form in (*FORMS[stock], "") if (c := _of(facts, scale, form, stock))]
    named = [c for form in FORMS[stock] if (c := _by_temper(facts, scale, form, stock))]
    return max([*own, *named], key=lambda c: len(c.points), default=None)


def _by_temper(facts: AlloyFacts, scale: str, form: str, stock: str) -> Curve | None:
    """A table whose tempers are named, with the work that each temper's reduction asks for."""
    steps = temper_steps(facts, stock)
    worked = []
    for known in facts.of(scale):
        strains = temper_strain(steps[known.state], stock) if known.state in steps else None
        if strains and known.form == form and not known.name and not known.reduction:
            middle = sum(strains) / 2
            worked.append(Point(middle, known.lowest, known.highest, known.state, known))
    soft = _annealed(facts.of(scale), form)
    return _rising(scale, form, soft, worked) if worked and soft else None


def _of(facts: AlloyFacts, scale: str, form: str, stock: str) -> Curve | None:
    worked = [
        Point(strain, known.lowest, known.highest, known.state, known)
        for known in facts.of(scale)
        if known.reduction and known.form == form and not known.name
        if (strain := strain_on(known.reduction, known.of, stock)) is not None
    ]
    soft = _annealed(facts.of(scale), form)
    return _rising(scale, form, soft, worked) if worked and soft else None


def _rising(scale: str, form: str, soft: Known, worked: list[Point]) -> Curve | None:
    """Annealed metal and worked points as a curve; None where it does not rise all the way."""
    start = Point(0.0, soft.lowest, soft.highest, "annealed", soft)
    points = (start, *sorted(worked, key=lambda point: point.strain))
    rising = all(a.low <= b.low and a.high <= b.high for a, b in pairwise(points))
    return Curve(scale, soft.unit, form, points) if rising else None


def _annealed(figures: Sequence[Known], form: str) -> Known | None:
    fitting = [k for k in figures if k.state == "annealed" and k.form in (form, "") and not k.name]
    return fitting[0] if fitting else None


def at(curve: Curve, strain: float) -> Hardness | None:
    """Hardness after a work [1] since the anneal, None beyond the table's end.

    Formula: straight lines in true strain between the points of the table, each end of the range
    by itself. Valid for: 0 <= strain <= the table's end.
    """
    if not 0 <= strain <= curve.most * (1 + 1e-9):
        return None
    for left, right in pairwise(curve.points):
        if strain <= right.strain * (1 + 1e-9):
            share = (strain - left.strain) / (right.strain - left.strain)
            low = left.low + share * (right.low - left.low)
            high = left.high + share * (right.high - left.high)
            return Hardness(low, high, curve.unit, curve.quantity, (left.known, right.known))
    return None


def strain_for(curve: Curve, hardness: float) -> float | None:
    """Work [1] after which the middle of the range is a hardness; None outside the table.

    The inverse of `at`. Valid for: from the annealed hardness to that of the table's end.
    """
    middles = [(point.low + point.high) / 2 for point in curve.points]
    for (left, one), (right, other) in pairwise(zip(curve.points, middles, strict=True)):
        if one <= hardness <= other and other > one:
            share = (hardness - one) / (other - one)
            return left.strain + share * (right.strain - left.strain)
    return None


def temper_steps(facts: AlloyFacts, stock: str) -> dict[str, Known]:
    """The reduction that gives each temper, for a stock (flat | wire), in order of hardness."""
    found: dict[str, Known] = {}
    for temper in TEMPERS:
        for known in facts.of("temper-reduction"):
            form_fits = known.form in FORMS[stock] or (known.form == "" and stock == "flat")
            if known.state == temper and form_fits and not known.name:
                found.setdefault(temper, known)
    return found


def temper_strain(known: Known, stock: str) -> tuple[float, float] | None:
    """Work [1] that a temper's reduction asks for, least and most; None where it is left open."""
    ends = [strain_on(end, known.of, stock) for end in (known.lowest, known.highest)]
    low, high = ends
    return None if low is None or high is None else (low, high)
