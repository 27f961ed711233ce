"""Plans for alloys of the handbook, with the workshop's settings from the records."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Any

from temperbook.derive import facts
from temperbook.derive.handbook import Handbook
from temperbook.metal.facts import AlloyFacts, Known
from temperbook.metal.planning.asked import Equipment
from temperbook.metal.planning.plan import Bench
from temperbook.metal.runs import reduction_of, strain_of
from temperbook.metal.spread import SpreadRule
from temperbook.problems import DataProblems, Problem
from temperbook.records.load import Library

SETTINGS, REDUCTION, GRAIN, SPREAD = (
    "bench/settings",
    "bench/reduction",
    "bench/grain",
    "bench/spread",
)
# Where the settings hold the reduction of one pass: process of a plan -> process and form.
# Forging has no passes of a size.
PER_PASS = {
    "groove": ("rolling", "bar"),
    "flat": ("rolling", "sheet"),
    "draw": ("drawing", "wire"),
}


@dataclass(frozen=True)
class Wanted:
    """A figure of the bench that a plan needs: subject, quantity and basis keys."""

    subject: str
    quantity: str
    keys: tuple[tuple[str, str], ...] = ()

    def fits(self, known: Known) -> bool:
        """Whether a figure is the one."""
        return all(getattr(known, key) == word for key, word in self.keys)


CROP = Wanted(SETTINGS, "crop-share")
SCALP = Wanted(SETTINGS, "scalp-share")
TRIM = Wanted(SETTINGS, "trim-share")
LOSS = Wanted(SETTINGS, "melt-loss")
ROLL = Wanted(SETTINGS, "roll-diameter")
FRICTION = Wanted(SETTINGS, "roll-friction")
USUAL = Wanted(REDUCTION, "reduction-ceiling", (("name", "most-alloys"),))
THICK = Wanted(REDUCTION, "fine-wire")
CRITICAL = Wanted(GRAIN, "critical-strain", (("name", "any-metal"),))
FACTOR = Wanted(SPREAD, "spread-constant", (("name", "factor"),))
SPLIT = Wanted(REDUCTION, "gap-criterion", (("name", "split-ends"),))
DELTA = Wanted(REDUCTION, "delta-limit", (("name", "wire"),))
POWER = Wanted(SPREAD, "spread-constant", (("name", "power"),))


def passes_of(process: str) -> Wanted:
    """The setting of one pass of a process."""
    working, form = PER_PASS[process]
    return Wanted(SETTINGS, "reduction-per-pass", (("process", working), ("form", form)))


def needed() -> Iterator[Wanted]:
    """Every figure without which no plan can be made."""
    yield from (CROP, SCALP, TRIM, LOSS, ROLL, FRICTION, USUAL, THICK, CRITICAL)
    yield from map(passes_of, PER_PASS)


def lacking(library: Library) -> list[Wanted]:
    """The figures that are not there; where there are any, no plan can be made."""
    return [wanted for wanted in needed() if _find(wanted, library) is None]


def bench(library: Library) -> Bench:
    """What the records say of benches. Errors: DataProblems that names every figure it lacks."""
    missing = lacking(library)
    if missing:
        raise DataProblems(_problem(wanted) for wanted in missing)
    return Bench(
        equipment=_equipment(library),
        usual=_figure(USUAL, library),
        thick_wire=_figure(THICK, library).highest,
        critical=_figure(CRITICAL, library).highest,
        rule=_rule(library),
        split_ends=_optional(SPLIT, library),
        delta=_optional(DELTA, library),
    )


def with_given(found: Bench, **given: Any) -> Bench:
    """The same with what was typed in the place of settings; None leaves a setting as it is."""
    typed = {name: value for name, value in given.items() if value is not None}
    equipment = found.equipment
    if "per_pass" in typed:
        share = typed["per_pass"]
        per_pass = dict.fromkeys(equipment.per_pass, share)
        equipment = replace(equipment, per_pass=per_pass, given=("per-pass",))
        del typed["per_pass"]
    return replace(found, equipment=replace(equipment, **typed))


def alloy_facts(alloy_id: str, handbook: Handbook) -> AlloyFacts:
    """The facts of an alloy by its id."""
    return facts.of_alloy(handbook.library.alloys[alloy_id], handbook)


def _equipment(library: Library) -> Equipment:
    def share(wanted: Wanted) -> float:
        return _middle(_figure(wanted, library)) / 100

    return Equipment(
        roll_diameter=_middle(_figure(ROLL, library)),
        friction=_middle(_figure(FRICTION, library)),
        per_pass={process: _per_pass(process, library) for process in PER_PASS},
        crop=share(CROP),
        scalp=share(SCALP),
        trim=share(TRIM),
        loss=share(LOSS),
    )


def _per_pass(process: str, library: Library) -> float:
    known = _figure(passes_of(process), library)
    share = _middle(known) / 100
    strain = strain_of(share) * (2 if known.of == "diameter" else 1)
    return reduction_of(strain)


def _rule(library: Library) -> SpreadRule | None:
    factor, power = _find(FACTOR, library), _find(POWER, library)
    return SpreadRule(factor.lowest, power.lowest) if factor and power else None


def _optional(wanted: Wanted, library: Library) -> float | None:
    known = _find(wanted, library)
    return known.lowest if known else None


def _middle(known: Known) -> float:
    return (known.lowest + known.highest) / 2


def _figure(wanted: Wanted, library: Library) -> Known:
    found = _find(wanted, library)
    assert found is not None
    return found


def _find(wanted: Wanted, library: Library) -> Known | None:
    subject = library.subjects.get(wanted.subject)
    if subject is None:
        return None
    known = facts.of_subject(subject, wanted.quantity)
    return next((one for one in known if wanted.fits(one)), None)


def _problem(wanted: Wanted) -> Problem:
    keys = "".join(f", {key}: {word}" for key, word in wanted.keys)
    return Problem(
        f"data/subjects/{wanted.subject}.yaml",
        0,
        f"has no {wanted.quantity}",
        needed=f"figures.{wanted.quantity}: {{value: ..., unit: ...{keys}, how: practice}}",
        mend="write the workshop's own figure; without it no plan is made",
    )
