"""A worked route from top to bottom: sections to scale, runs as work done, anneals as marks.

Toned is metal, dashed what was there before. Work is true strain since the last anneal, on one
scale for the whole route; beyond each ceiling it is hatched, as on the anneal chart.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from temperbook.drawing import route_hardness, route_marks, route_sections, text_flow
from temperbook.drawing.draughting import CAP, LEADING, WIDE, label
from temperbook.drawing.shapes import (
    BOLD,
    HAIRLINE,
    Line,
    Picture,
    Rect,
    Shape,
    hatching,
)
from temperbook.views.formatting import listed
from temperbook.views.route import RouteShown
from temperbook.views.route_runs import Part, RunShown

Colour = Callable[[float], str]

EDGE = 4.0
SECTIONS = EDGE + route_sections.ACROSS / 2  # middle of the sections [mm]
X0, X1 = 46.0, WIDE - EDGE  # of the scale of work [mm]
BAR = 5.0
ROOM = 1.18  # share of the largest ceiling that the scale reaches
FOOT = (
    "Sections to one scale: toned is metal, dashed what was there before. A step in a bar is a "
    "pass. Thick line: ceiling; hatched: do not enter. Mark under a bar: floor."
)


@dataclass(frozen=True)
class Scales:
    """How work [1] and sections [mm] lie on the picture."""

    most: float
    times: float

    def x(self, strain: float) -> float:
        """Place [mm] of a work [1]."""
        return X0 + (X1 - X0) * min(strain / self.most, 1.0)


def draw(said: RouteShown, colour: Colour) -> Picture:
    """The route as one picture, WIDE mm across."""
    runs = said.runs
    sections = [runs[0].start, *(run.end for run in runs)]
    limits = [run.ceiling_strain or run.strain for run in runs]
    scales = Scales(max(limits) * ROOM, route_sections.scale(sections))
    shapes, y = _start(said, scales, EDGE)
    axis, y = _axis(scales, y)
    shapes += axis
    hardness = route_hardness.Scale.of(runs)
    for run in runs:
        drawn, y = _run(run, scales, hardness, y)
        shapes += drawn
        if run.then == "anneal" and said.anneal:
            drawn, y = route_marks.anneal(said.anneal, (SECTIONS, X0, X1), colour, y)
            shapes += drawn
    drawn, y = _end(said, y)
    return Picture(WIDE, y, tuple([*shapes, *drawn]), alt(said))


def _start(said: RouteShown, scales: Scales, y: float) -> tuple[list[Shape], float]:
    first = said.runs[0].start
    middle = y + route_sections.TALL / 2
    what = "Ingot, cropped and scalped" if said.state == "cast" else "Annealed stock"
    under = [said.start]
    if said.amounts and said.amounts.begins:
        under.append(f"{said.amounts.begins} long")
    shapes = [
        *route_sections.shown(first, None, (SECTIONS, middle), scales.times, EDGE),
        label(X0, middle - 1.4, what, bold=True),
        label(X0, middle - 1.4 + LEADING, ", ".join(under), role="ash"),
    ]
    return shapes, y + route_sections.TALL + 4.0


def _axis(scales: Scales, y: float) -> tuple[list[Shape], float]:
    """The scale of work: a line with a tick for every half, before the first run."""
    line = y + 2 * LEADING + 1.0
    shapes: list[Shape] = [
        label(X0, y + CAP, "work since the last anneal, true strain", role="ash"),
        Line(X0, line, X1, line, "ash", HAIRLINE),
    ]
    halves = 0
    while halves / 2 <= scales.most:
        x = scales.x(halves / 2)
        shapes.append(Line(x, line - 1.0, x, line, "ash", HAIRLINE))
        if x < X1 - 4:
            anchor = "middle" if halves else "start"
            shapes.append(label(x, line - 2.0, f"{halves / 2:g}", anchor=anchor, role="ash"))  # type: ignore[arg-type]
        halves += 1
    return shapes, line + 4.0


def _run(
    run: RunShown, scales: Scales, hardness: route_hardness.Scale | None, y: float
) -> tuple[list[Shape], float]:
    head = f"{run.number}. {run.working}" + (f", {run.count}" if run.count else "")
    top = y + 6.5
    middle = (SECTIONS, y + 2.0 + route_sections.TALL / 2)
    shapes: list[Shape] = [
        *route_sections.shown(run.end, run.start, middle, scales.times, EDGE),
        label(SECTIONS, y + route_sections.TALL + 7.0, run.after, bold=True, anchor="middle"),
        label(X0, y + 3.0, head, bold=True),
        *_bar(run, scales, top),
    ]
    base = top + BAR + 5.7
    for text in text_flow.lines(", ".join(run.reductions), CAP, X1 - X0, 700):
        shapes.append(label(X0, base, text, bold=True))
        base += LEADING
    for limit in (run.ceiling, run.floor):
        if limit:
            shapes += _limit(limit, base)
            base += LEADING
    bottom = max(base - LEADING, y + route_sections.TALL + 7.0)
    if hardness:
        drawn, bottom = hardness.run(run, scales.x, bottom + 3.0)
        shapes += drawn
    return shapes, bottom + 5.0


def _bar(run: RunShown, scales: Scales, top: float) -> list[Shape]:
    """The work of a run with its passes, its ceiling and its floor, from a top [mm]."""
    bottom, done = top + BAR, scales.x(run.strain)
    shapes: list[Shape] = [Rect(X0, top, done - X0, BAR, "hairline", "ink")]
    for one in run.passes[:-1]:
        x = scales.x(one.strain)
        shapes.append(Line(x, top, x, bottom, "ink", HAIRLINE))
    if run.ceiling_strain is not None:
        x = scales.x(run.ceiling_strain)
        shapes += [
            *hatching(x, top, X1 - x, BAR, 1.6),
            Rect(X0, top, X1 - X0, BAR, "", "ink", HAIRLINE),
            Line(x, top - 1.4, x, bottom + 1.4, "ink", BOLD),
        ]
    if run.floor_strain is not None:
        x = scales.x(run.floor_strain)
        shapes.append(route_marks.floor(x, bottom + 0.6))
    return shapes


def _limit(limit: Part, base: float) -> list[Shape]:
    text = f"{limit.label} {limit.text}"
    return [label(X0, base, text, role="ash"), *route_marks.beside(limit.mark, X0, text, base)]


def _end(said: RouteShown, y: float) -> tuple[list[Shape], float]:
    done = f"Done: {said.end}, {said.temper}"
    base = y + CAP + 1.0
    shapes: list[Shape] = [label(EDGE, base, done, bold=True)]
    base += LEADING * 1.6
    for text in text_flow.lines(FOOT, CAP, WIDE - 2 * EDGE):
        shapes.append(label(EDGE, base, text, role="ash"))
        base += LEADING
    return shapes, base


def alt(said: RouteShown) -> str:
    """What a sighted person learns from the picture."""
    told = [
        f"A route from top to bottom, {said.start} {said.state} to {said.end} {said.temper}, "
        f"with {said.anneals}. Sections are to one scale, the one before dashed; beyond each "
        "ceiling the scale of work is hatched."
    ]
    for run in said.runs:
        limits = [f"{part.label} {part.text}" for part in (run.ceiling, run.floor) if part]
        told.append(
            f"Run {run.number}: {run.working.lower()} from {run.before} to {run.after}"
            f"{' in ' + run.count if run.count else ''}, {listed(run.reductions)}"
            f"{' (' + ', '.join(limits) + ')' if limits else ''}"
            f"{', then anneal' if run.then == 'anneal' else ''}."
        )
        if run.hardness:
            drops = " and drops at the anneal" if run.then == "anneal" else ""
            told.append(f"Hardness rises to {run.hardness_text}{drops}.")
    if said.anneal:
        told.append(f"Anneal: {route_marks.told(said.anneal)}.")
    return " ".join(told).replace("\u00a0", " ")
