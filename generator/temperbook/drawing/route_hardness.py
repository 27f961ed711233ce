"""The hardness of a route, over the scale of work: it rises along a run, drops at an anneal."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from temperbook.drawing import text_flow
from temperbook.drawing.draughting import CAP, LEADING, label
from temperbook.drawing.shapes import HAIRLINE, LINE, Line, Polygon, Shape
from temperbook.metal.planning.texts import HARDNESS_WHY
from temperbook.views import formatting
from temperbook.views.route_runs import RunShown

HIGH = 8.0
LEFT, RIGHT = 46.0, 116.0  # of the words [mm]
NOT_FROM_CAST = "hardness: not known from cast metal"


@dataclass(frozen=True)
class Scale:
    """The hardness that the lowest and the highest line of every plot stand for."""

    low: float
    high: float

    @staticmethod
    def of(runs: Sequence[RunShown]) -> Scale | None:
        """The scale of a route; None where no table gives any of its hardness."""
        ends = [end for run in runs for _, *pair in run.hardness for end in pair]
        return Scale(min(ends), max(ends)) if ends else None

    def y(self, value: float, top: float) -> float:
        """Place [mm] of a hardness in a plot that begins at a top [mm]."""
        return top + HIGH * (1 - (value - self.low) / (self.high - self.low))

    def run(
        self, run: RunShown, x: Callable[[float], float], top: float
    ) -> tuple[list[Shape], float]:
        """A run's hardness as a band over its work, or a word where it is not known."""
        if not run.hardness:
            return _unknown(run, top)
        said = label(LEFT, top + CAP, _words(run))
        top += CAP + 2.0
        lows = [(x(strain), self.y(low, top)) for strain, low, _ in run.hardness]
        highs = [(x(strain), self.y(high, top)) for strain, _, high in run.hardness]
        end = highs[-1][0]
        soft = self.y(run.hardness[0][1], top)
        shapes: list[Shape] = [
            said,
            Line(LEFT, top + HIGH, RIGHT, top + HIGH, "ash", HAIRLINE),
            Polygon((*highs, *reversed(lows)), "hairline", "", HAIRLINE),
            Polygon(tuple(highs), "", "ink", LINE, closed=False),
            Polygon(tuple(lows), "", "ink", LINE, closed=False),
        ]
        if run.then == "anneal":
            shapes.append(Line(end, lows[-1][1], end, max(soft, lows[-1][1]), "ash", LINE, True))
        return shapes, top + HIGH


def _words(run: RunShown) -> str:
    """`hardness 66–76, at the end 123–138 HV`."""
    _, low, high = run.hardness[0]
    soft = formatting.ends((low, high), 0)
    return f"hardness {soft}, at the end {run.hardness_text}"


def _unknown(run: RunShown, top: float) -> tuple[list[Shape], float]:
    text = NOT_FROM_CAST if run.hardness_text == HARDNESS_WHY["from-cast"] else run.hardness_text
    base = top + CAP
    shapes: list[Shape] = []
    for line in text_flow.lines(text, CAP, RIGHT - LEFT):
        shapes.append(label(LEFT, base, line, role="ash"))
        base += LEADING
    return shapes, base - LEADING
