"""The pages on which a plan is made: from start to end, where one stands, and backwards."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import asdict, dataclass
from typing import Any
from urllib.parse import urlencode

from temperbook.derive import planning, route_plans, tables
from temperbook.derive.handbook import Handbook
from temperbook.metal.hardening import TEMPERS
from temperbook.metal.planning import backwards, plan, texts, where
from temperbook.metal.planning.asked import PROCESSES, SOFT, STARTS, Request
from temperbook.metal.register import inputs
from temperbook.metal.register.formula import Input
from temperbook.views import backward as backward_view
from temperbook.views import formula_page, plan_lines, route
from temperbook.views import plan as plan_view
from temperbook.views import where as where_view
from temperbook.views.formula_page import FieldShown
from temperbook.views.pages import Link, Page


@dataclass(frozen=True)
class Question:
    """A question of planning: its id and command, title, what it answers, its inputs, and in which
    folded parts of the form they stand (the first part is open)."""

    id: str
    title: str
    answers: str
    inputs: Mapping[str, Input]
    parts: tuple[tuple[str, tuple[str, ...]], ...]


@dataclass(frozen=True)
class PartShown:
    """Fields of a form that belong together; folded where it has a title."""

    title: str
    fields: list[FieldShown]


@dataclass(frozen=True)
class PlanForm:
    """Such a page: its form, and an example in words that needs no script."""

    id: str
    answers: str
    parts: list[PartShown]
    command: str
    lines: list[str]


def _percent(label: str) -> Input:
    return inputs.number(label, "percent", optional=True)


def _choice(label: str, *words: str) -> Input:
    return Input("choice", label, choices=words, optional=True)


LIMITS = {
    "ceiling": _percent("At most between anneals, of the area"),
    "first-ceiling": _percent("At most in the first run, of the area"),
    "floor": _percent("At least before an anneal, of the area"),
    "first-floor": _percent("At least in the first run, of the area"),
}
TOOLS = {
    "process": _choice("Working", *PROCESSES),
    "per-pass": _percent("At most in one pass, of the area"),
    "roll-diameter": inputs.number("Diameter of the rolls", "mm", optional=True),
    "friction": inputs.number("Friction in the rolls", optional=True),
    "holes": Input("list", "Holes of the plate", "mm", optional=True),
}
AMOUNT = {
    "length": inputs.number("Length of the finished piece", "mm", optional=True),
    "mass": inputs.number("Or its mass", "g", optional=True),
}
TEMPER = {
    "temper": _choice("Temper at the end", SOFT, *TEMPERS),
    "last": _percent("Or the last reduction, of the area"),
}
START = _choice("The start is", *STARTS)
MY_LIMITS, MY_TOOLS = "Limits of your own", "Your mill and drawplate"

QUESTIONS = {
    question.id: question
    for question in (
        Question(
            "plan",
            "Working plan",
            "From one section to another with the fewest anneals that the metal allows.",
            {
                "alloy": inputs.alloy(),
                "from": inputs.section("Section at the start"),
                "to": inputs.section("Section at the end"),
                "start": START,
                **TEMPER,
                **AMOUNT,
                **LIMITS,
                "anneals-more": inputs.number("Anneals more than needed", optional=True),
                **TOOLS,
            },
            (
                ("", ("alloy", "from", "to", "start", "temper")),
                ("The finished piece", ("length", "mass", "last")),
                (MY_LIMITS, (*LIMITS, "anneals-more")),
                (MY_TOOLS, tuple(TOOLS)),
            ),
        ),
        Question(
            "used",
            "Where do I stand?",
            "How far the metal has come since its last anneal, and whether it may go on.",
            {
                "alloy": inputs.alloy(),
                "from": inputs.section("Section at the last anneal, or as cast"),
                "now": inputs.section("Section now"),
                "start": START,
                **LIMITS,
                "process": TOOLS["process"],
            },
            (("", ("alloy", "from", "now", "start")), (MY_LIMITS, (*LIMITS, "process"))),
        ),
        Question(
            "backward",
            "From the piece back to the ingot",
            "Ingot, mould and charge for a finished piece.",
            {
                "alloy": inputs.alloy(),
                "to": inputs.section("Section of the finished piece"),
                **AMOUNT,
                "anneals": inputs.number("Anneals on the way", optional=True),
                "mould": Input("section", "Section of your mould", "mm", optional=True),
                **TEMPER,
                **LIMITS,
                **TOOLS,
            },
            (
                ("", ("alloy", "to", "length", "mass", "anneals")),
                ("Mould and temper", ("mould", *TEMPER)),
                (MY_LIMITS, tuple(LIMITS)),
                (MY_TOOLS, tuple(TOOLS)),
            ),
        ),
    )
}


def all_pages(handbook: Handbook) -> list[Page]:
    """A page for each question; none where the records lack what a plan needs."""
    return [
        Page(link.href, "planning", link.text, shown(question, handbook), link.note)
        for link, question in zip(listed(handbook), QUESTIONS.values(), strict=False)
    ]


def address(question_id: str) -> str:
    """Where a question's form stands."""
    return f"work-it-out/{question_id}/"


def listed(handbook: Handbook) -> list[Link]:
    """The questions by title and address; none where no plan can be made."""
    if planning.lacking(handbook.library) or not route.of(handbook):
        return []
    return [Link(q.title, address(q.id), q.answers) for q in QUESTIONS.values()]


def for_alloy(alloy_id: str, handbook: Handbook) -> list[Link]:
    """The questions with the alloy filled in."""
    query = urlencode({"alloy": alloy_id})
    return [Link(link.text, f"{link.href}?{query}") for link in listed(handbook)]


def shown(question: Question, handbook: Handbook) -> PlanForm:
    """What the page of a question says; its example is the first route of the handbook."""
    command, lines = EXAMPLES[question.id](handbook)
    fields = {
        name: formula_page.field(question.id, name, declared, handbook)
        for name, declared in question.inputs.items()
    }
    parts = [PartShown(title, [fields[name] for name in names]) for title, names in question.parts]
    return PlanForm(question.id, question.answers, parts, command, lines)


Example = tuple[str, list[str]]


def _first(handbook: Handbook) -> tuple[str, Request, plan.Plan]:
    """Alloy, request and plan of the first working of a route that keeps to its alloy's limits."""
    found = list(route.of(handbook).values())
    plain = [r for r in found if not any(s.ceiling or s.first_ceiling for s in r.stretches)]
    first = (plain or found)[0]
    made = route_plans.of_route(first, handbook)[0]
    return first.alloy, made.request, made


def _gauges(handbook: Handbook) -> dict[str, dict[str, float]]:
    found: dict[str, dict[str, float]] = tables.made(("gauges",), handbook.library)["gauges"]
    return found


def _plan(handbook: Handbook) -> Example:
    alloy, request, _ = _first(handbook)
    plain = Request(request.start, request.end, state=request.state)
    made = plan.make(plain, planning.alloy_facts(alloy, handbook), planning.bench(handbook.library))
    command = (
        f'temperbook plan --alloy {alloy} --from "{plain.start.text}" --to "{plain.end.text}" '
        f"--start {plain.state}"
    )
    return command, plan_lines.lines(plan_view.data(made, _gauges(handbook)))


def _used(handbook: Handbook) -> Example:
    alloy, _, made = _first(handbook)
    run = made.runs[-1]
    now = run.passes[0].section if run.passes else run.end
    asked = Request(run.start, now, process=run.process)
    found = where.used(
        asked, planning.alloy_facts(alloy, handbook), planning.bench(handbook.library)
    )
    command = (
        f'temperbook used --alloy {alloy} --from "{run.start.text}" --now "{now.text}" '
        f"--process {run.process}"
    )
    return command, where_view.lines(where_view.data(found))


def _backward(handbook: Handbook) -> Example:
    alloy, request, _ = _first(handbook)
    length = request.length or EXAMPLE_LENGTH
    asked = Request(request.end, request.end, length=length)
    facts, bench = planning.alloy_facts(alloy, handbook), planning.bench(handbook.library)
    found = backwards.backwards(asked, facts, bench, None, 1)
    command = f'temperbook backward --alloy {alloy} --to "{request.end.text}" --length {length:g}'
    return command, backward_view.lines(backward_view.data(found, _gauges(handbook)))


EXAMPLE_LENGTH = 100.0  # mm
EXAMPLES: Mapping[str, Callable[[Handbook], Example]] = {
    "plan": _plan,
    "used": _used,
    "backward": _backward,
}


def data(handbook: Handbook) -> dict[str, Any]:
    """What the forms compute from: questions, bench and sentences; the alloys are tables."""
    if planning.lacking(handbook.library):
        return {"questions": {}, "bench": None, "texts": {}}
    return {
        "questions": {
            q.id: {"id": q.id, "inputs": formula_page.inputs_of(q.inputs)}
            for q in QUESTIONS.values()
        },
        "bench": asdict(planning.bench(handbook.library)),
        "texts": {
            "impossible": texts.IMPOSSIBLE,
            "warnings": texts.WARNINGS,
            "notes": texts.NOTES,
            "hardness_why": texts.HARDNESS_WHY,
        },
    }
