"""How well the handbook's figures stand: `temperbook check --report`."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, field
from typing import Any

from temperbook.derive import grades, outliers
from temperbook.derive.handbook import Called, Handbook
from temperbook.derive.limits import READ
from temperbook.records.models import Alloy
from temperbook.views import formatting

# What a bench asks of every alloy, and the quantities that answer it.
ASKED = {
    "anneal": ("anneal",),
    "limit between anneals": ("reduction-ceiling",),
    "first melting": ("solidus", "melting-point"),
    "density": ("density",),
    "hardness annealed": ("hardness", "hardness-brinell", "hardness-strip", "tensile"),
}
LIMITS = ("reduction-ceiling", "reduction-floor", "anneal")
TRADE = "D"
WORST = 20


@dataclass(frozen=True)
class Weak:
    """An alloy by what it lacks and what of it rests on little."""

    alloy: Alloy
    lacks: list[str]
    one_source: list[str] = field(default_factory=list)
    trade_alone: list[str] = field(default_factory=list)

    @property
    def score(self) -> int:
        """What is missing counts twice what rests on trade pages, that twice one source alone."""
        return 4 * len(self.lacks) + 2 * len(self.trade_alone) + len(self.one_source)


def data(handbook: Handbook) -> dict[str, Any]:
    """The report as plain data."""
    weak = _weak(handbook)
    return {
        "figures_by_how_and_grade": _crossed(handbook),
        "without_published_anneal": _lacking(weak, "anneal"),
        "without_published_limit": _lacking(weak, "limit between anneals"),
        "limits_on_one_source": sorted(a for w in weak for a in w.one_source),
        "limits_on_trade_pages_alone": sorted(a for w in weak for a in w.trade_alone),
        "far_from_the_trend": [
            {"record": o.record, "quantity": o.quantity, "found": o.found, "expected": o.expected}
            for o in outliers.of(handbook)
        ],
        "worst": [
            {"alloy": w.alloy.id, "lacks": w.lacks, "score": w.score}
            for w in sorted(weak, key=lambda w: (-w.score, w.alloy.id))[:WORST]
            if w.score
        ],
    }


def lines(handbook: Handbook) -> list[str]:
    """The same in words."""
    found = data(handbook)
    text = ["Figures by how they are known and the best grade of their rows", ""]
    columns = ("A", "B", "C", "D", "none")
    text.append(f"  {'':<10}" + "".join(f"{column:>7}" for column in columns))
    for how, row in found["figures_by_how_and_grade"].items():
        text.append(f"  {how:<10}" + "".join(f"{row[column]:>7,}" for column in columns))
    for key, title in (
        ("without_published_anneal", "Alloys without a published anneal"),
        ("without_published_limit", "Alloys without a published limit between anneals"),
        ("limits_on_one_source", "Limits and anneals that rest on one source"),
        ("limits_on_trade_pages_alone", "Limits and anneals that rest on trade pages alone"),
    ):
        text += ["", f"{title}: {len(found[key])}", *(f"  {one}" for one in found[key])]
    text += ["", "Far from the trend, to be mended or understood"]
    for one in found["far_from_the_trend"]:
        said = f"{one['quantity']} {one['found']:.4g}, expected {one['expected']}"
        text.append(f"  {one['record']:<30} {said}")
    text += ["", "Where most is missing"]
    for one in found["worst"]:
        lacks = formatting.listed(one["lacks"]) if one["lacks"] else "nothing, but rests on little"
        text.append(f"  {one['score']:>3}  {one['alloy']:<30} lacks {lacks}")
    return text


def _crossed(handbook: Handbook) -> dict[str, dict[str, int]]:
    counted: Counter[tuple[str, str]] = Counter()
    for called in handbook.figures.values():
        grade = grades.best(called.figure.from_, handbook.library) or "none"
        counted[(called.figure.how, grade)] += 1
    hows = handbook.library.vocabulary.words["how"]
    return {how: {g: counted[(how, g)] for g in ("A", "B", "C", "D", "none")} for how in hows}


def _lacking(weak: list[Weak], what: str) -> list[str]:
    return [w.alloy.id for w in weak if what in w.lacks]


def _weak(handbook: Handbook) -> list[Weak]:
    by_record: dict[str, list[Called]] = {}
    for called in handbook.figures.values():
        by_record.setdefault(called.record, []).append(called)
    return [
        _of(alloy, by_record.get(alloy.id, []), handbook)
        for alloy in handbook.library.alloys.values()
    ]


def _of(alloy: Alloy, figures: list[Called], handbook: Handbook) -> Weak:
    read = [called for called in figures if called.figure.how in READ]
    known = {called.quantity for called in read}
    limits = [called for called in read if called.quantity in LIMITS]
    library = handbook.library
    return Weak(
        alloy,
        [what for what, quantities in ASKED.items() if not known & set(quantities)],
        [c.address for c in limits if len(formatting.sources_of(c.figure.from_, library)) == 1],
        [c.address for c in limits if grades.best(c.figure.from_, library) == TRADE],
    )
