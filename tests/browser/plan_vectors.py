"""Questions of planning with Python's answers, for the forms in the browser to give the same."""

from __future__ import annotations

import random
from typing import Any

from temperbook.derive import planning, tables
from temperbook.derive.handbook import Handbook
from temperbook.metal import sections
from temperbook.metal.planning import backwards, plan, where
from temperbook.metal.planning.asked import Request
from temperbook.views import backward as backward_view
from temperbook.views import plan as plan_view
from temperbook.views import where as where_view

NUMBER = {"plan": 400, "used": 150, "backward": 150}
SHAPES = ("round", "square", "flat", "flattened", "rounded", "rolled wire")
TEMPERS = (
    "",
    "",
    "",
    "soft",
    "quarter-hard",
    "half-hard",
    "hard",
    "spring",
    "bouncy",
    "100hv",
    "60",
    "90-hb",
)
# Where rounding could tell the two apart: dust at a ceiling, at a reserve, at equal sizes.
EDGES: tuple[dict[str, Any], ...] = (
    {"start": "round 1.0", "end": "round 0.35", "ceiling": 0.65},
    {"start": "round 6.4", "end": "round 5.1", "last": 0.215},
    {"start": "square 6", "end": "square 3", "ceiling": 0.75},
    {"start": "square 6", "end": "square 6"},
    {"start": "flat 20x2", "end": "flat 20x2"},
    {"start": "flat 20x2", "end": "flat 10x2"},
    {"start": "flat 20x2", "end": "round 1"},
    {"start": "round 2", "end": "round 1.0", "ceiling": 0.5, "more": 3},
    {"start": "round 2", "end": "round 1.0", "process": "forge"},
    {"start": "round 2", "end": "flat 2.5x1", "process": "draw"},
)


def all_of(handbook: Handbook) -> list[dict[str, Any]]:
    """Each question as {kind, asked, equipment, answer | refused}: the same at every run."""
    chance = random.Random(4)
    made = [_edge(edge, handbook) for edge in EDGES]
    for kind, number in NUMBER.items():
        made += [_question(kind, chance, handbook) for _ in range(number)]
    answering = Answering(handbook)
    return [question | answering.to(question) for question in made]


class Answering:
    """Python's answers, the bench and the gauges read once."""

    def __init__(self, handbook: Handbook) -> None:
        self.bench = planning.bench(handbook.library)
        self.gauges = tables.made(("gauges",), handbook.library)["gauges"]
        alloys = handbook.library.alloys
        self.facts = {alloy: planning.alloy_facts(alloy, handbook) for alloy in alloys}

    def to(self, question: dict[str, Any]) -> dict[str, Any]:
        """The answer to one question, or its refusal."""
        asked, equipment = dict(question["asked"]), dict(question["equipment"])
        facts = self.facts[asked.pop("alloy")]
        mould, anneals = asked.pop("mould", None), asked.pop("anneals", None)
        end = sections.parse(asked.pop("end"))
        start = sections.parse(asked.pop("start")) if "start" in asked else end
        request = Request(start, end, **asked)
        if "holes" in equipment:
            equipment["holes"] = tuple(equipment["holes"])
        bench = planning.with_given(self.bench, **equipment)
        try:
            if question["kind"] == "plan":
                return {"answer": plan_view.data(plan.make(request, facts, bench), self.gauges)}
            if question["kind"] == "used":
                return {"answer": where_view.data(where.used(request, facts, self.bench))}
            cast = sections.parse(mould) if mould else None
            found = backwards.backwards(request, facts, bench, cast, anneals)
            return {"answer": backward_view.data(found, self.gauges)}
        except ValueError as refused:
            return {"refused": str(refused)}


def _edge(edge: dict[str, Any], handbook: Handbook) -> dict[str, Any]:
    alloy = next(iter(handbook.library.alloys))
    return {"kind": "plan", "asked": {"alloy": alloy, **edge}, "equipment": {}}


def _question(kind: str, chance: random.Random, handbook: Handbook) -> dict[str, Any]:
    start, end, large, small = _sections(chance)
    asked: dict[str, Any] = {
        "alloy": chance.choice(list(handbook.library.alloys)),
        "end": end,
        "temper": chance.choice(TEMPERS),
        "state": chance.choice(("cast", "annealed")),
    }
    if chance.random() < 0.2:
        asked |= {"temper": "", "last": _number(chance, 0.05, 0.7)}
    for name in ("ceiling", "first_ceiling", "floor", "first_floor"):
        if chance.random() < 0.25:
            asked[name] = _number(chance, 0.1, 0.9)
    if chance.random() < 0.1:
        asked["process"] = chance.choice(("forge", "groove", "flat", "draw"))
    if kind == "backward":
        asked |= {"mould": chance.choice((None, None, start)), "anneals": chance.randrange(4)}
    else:
        asked["start"] = start
    if kind == "plan":
        asked["more"] = chance.choice((0, 0, 0, 1, 2))
    amounts = {"length": (5, 500), "mass": (1, 100)}
    if kind == "backward" or chance.random() < 0.5:
        amount = chance.choice(list(amounts))
        asked[amount] = _number(chance, *amounts[amount])
    return {"kind": kind, "asked": asked, "equipment": _equipment(chance, start, large, small)}


def _sections(chance: random.Random) -> tuple[str, str, float, float]:
    large = _number(chance, 0.5, 12)
    small = _number(chance, large * 0.05, large * 1.01)
    width = _number(chance, large * 1, large * 10)
    squeezed = _number(chance, large * 0.9, large * 1.3)
    shape = chance.choice(SHAPES)
    ends = {
        "round": (f"round {large}", f"round {small}"),
        "square": (f"square {large}", f"square {small}"),
        "flat": (f"flat {width}x{large}", f"flat {width}x{small}"),
        "flattened": (f"square {large}", f"flat {squeezed}x{small}"),
        "rounded": (f"square {large}", f"round {small}"),
        "rolled wire": (f"round {large}", f"flat {squeezed}x{small}"),
    }
    return (*ends[shape], large, small)


def _equipment(chance: random.Random, start: str, large: float, small: float) -> dict[str, Any]:
    found: dict[str, Any] = {}
    for name, ends in (
        ("roll_diameter", (30, 120)),
        ("friction", (0.05, 0.4)),
        ("per_pass", (0.02, 0.5)),
    ):
        if chance.random() < 0.2:
            found[name] = _number(chance, *ends)
    if not start.startswith("flat") and chance.random() < 0.4:
        holes, size = [], large
        while size > small:
            holes.append(round(size, 3))
            size *= chance.uniform(0.86, 0.97)
        found["holes"] = [*holes, small]
    return found


def _number(chance: random.Random, low: float, high: float) -> float:
    return round(chance.uniform(low, high), 3)
