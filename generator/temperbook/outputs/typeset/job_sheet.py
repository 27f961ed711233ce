"""A job sheet for the bench as the JSON that its Typst template takes: a route's runs with boxes
to tick, and its signs drawn."""

from __future__ import annotations

from dataclasses import asdict
from typing import Any

from temperbook.drawing import marks, qr
from temperbook.drawing.lettering import cap_share
from temperbook.drawing.paper import LETTERING
from temperbook.drawing.route_marks import Colour, words
from temperbook.drawing.shapes import LINE, Circle, Picture, Shape
from temperbook.outputs.typeset.compile import picture_data
from temperbook.outputs.typeset.pack import PAPERS
from temperbook.views.formatting import LEGEND
from temperbook.views.route import RouteShown

CODE, SIGN, MARK = 24.0, 9.0, 3.0  # mm


def data(said: RouteShown, size: str, colour: Colour) -> dict[str, Any]:
    """Everything that the template needs for a route on `size` paper (a4 or letter)."""
    width, height = PAPERS[size]
    letters = LETTERING["bench"]
    return {
        **asdict(said),
        "legend": [(kind, meaning) for kind, meaning in said.legend if kind in _used(said)],
        "runs": [asdict(run) for run in said.runs],
        "warnings": said.warnings,
        "width": width,
        "height": height,
        "letters": {**asdict(letters), "share": cap_share()},
        "fire": _fire(said, colour),
        "at_anneal": words(said.anneal) if said.anneal else "",
        "sign": _sign(said),
        "marks": {kind: _square(marks.provenance(kind, 1.5, 1.5, 2.4), MARK) for kind, _ in LEGEND},
        "code": _square(qr.code(said.address, 0, 0, CODE), CODE),
    }


def _used(said: RouteShown) -> set[str]:
    """The provenance marks that stand on the sheet."""
    parts = [part for run in said.runs for part in (run.ceiling, run.floor) if part]
    if said.anneal:
        parts += [said.anneal.heat, said.anneal.quench, *said.anneal.by_eye]
    return {"computed", *(part.mark for part in parts)}


def _fire(said: RouteShown, colour: Colour) -> dict[str, Any] | None:
    """A disc in the colour of the anneal's heat; None where no heat is published."""
    if said.anneal is None or said.anneal.low is None or said.anneal.high is None:
        return None
    middle = (said.anneal.low + said.anneal.high) / 2
    return _square([Circle(SIGN / 2, SIGN / 2, 4.0, colour(middle), "ink", LINE)], SIGN)


def _sign(said: RouteShown) -> dict[str, Any] | None:
    if said.anneal is None:
        return None
    return _square(marks.cooling(said.anneal.rule, SIGN / 2, SIGN / 2, SIGN - 1.0), SIGN)


def _square(shapes: list[Shape], size: float) -> dict[str, Any]:
    return picture_data(Picture(size, size, tuple(shapes)))
