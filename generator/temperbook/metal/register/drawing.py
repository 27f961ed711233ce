"""Registered formulas of drawing through a die."""

from __future__ import annotations

from math import log
from typing import Any

from temperbook.metal import drawing, guards, rolling
from temperbook.metal.register.formula import LISTED, Formula, Outputs, number, share
from temperbook.metal.register.rolling import GROOVER


def _draw_force(**given: Any) -> Outputs:
    before, after = number(given, "from"), number(given, "to")
    guards.smaller_after(before, after, "a draw", "diameter")
    strain = 2 * log(before / after)
    flow = rolling.mean_flow_stress(
        strain, number(given, "strength-coefficient"), number(given, "hardening-exponent")
    )
    angle, friction = number(given, "half-angle"), number(given, "friction")
    stress = drawing.draw_stress(before, after, angle, friction, flow)
    return {
        "true-strain": strain,
        "mean-flow-stress": flow,
        "draw-stress": stress,
        "force": drawing.draw_force(stress, after),
    }


def _draw_schedule(**given: Any) -> Outputs:
    before, after, per_draw = number(given, "from"), number(given, "to"), share(given, "per-draw")
    if given["holes"]:
        sizes = drawing.schedule_by_holes(before, after, per_draw, holes(str(given["holes"])))
    else:
        sizes = drawing.even_schedule(before, after, per_draw)
    numbered = {f"size-{position}": size for position, size in enumerate(sizes, 1)}
    return {"draws": len(sizes), **numbered}


def holes(text: str) -> list[float]:
    """The sizes [mm] of a list such as `1.0, 0.9, 0.8`. Errors: ValueError for what is no size."""
    try:
        return [float(part) for part in text.split(",") if part.strip()]
    except ValueError:
        raise ValueError(f"holes are sizes with commas between them, not `{text}`") from None


def _delta_factor(**given: Any) -> Outputs:
    angle, reduction = number(given, "half-angle"), share(given, "reduction")
    return {"delta": drawing.delta_factor(angle, reduction)}


FORMULAS = (
    Formula(
        "draw-force",
        "Force of a draw",
        {
            "from": "mm",
            "to": "mm",
            "half-angle": "degrees",
            "friction": "",
            "strength-coefficient": "MPa",
            "hardening-exponent": "",
        },
        {"true-strain": "", "mean-flow-stress": "MPa", "draw-stress": "MPa", "force": "N"},
        _draw_force,
        "s = Y (1 + mu/tan a) phi ln(A0/A1); phi = 0.88 + 0.12 D/L; F = s A1",
        f"{GROOVER}, Eqs. 18.32 to 18.34; example 18.4",
        example={
            "from": 2.5,
            "to": 2.0,
            "half-angle": 15,
            "friction": 0.07,
            "strength-coefficient": 205,
            "hardening-exponent": 0.2,
        },
        expected={
            "true-strain": 0.44629,
            "mean-flow-stress": 145.39,
            "draw-stress": 94.89,
            "force": 298.1,
        },
        note="The example's printed 94.1 MPa and 295.5 N do not follow from its printed inputs.",
    ),
    Formula(
        "draw-schedule",
        "Holes of a drawplate",
        {"from": "mm", "to": "mm", "per-draw": "percent of the area", "holes": LISTED},
        {"draws": "count"},
        _draw_schedule,
        "n = ceil(ln(A0/A1) / -ln(1 - r)); with holes, each time the smallest within reach",
        "conservation of volume",
        example={"from": 1.0, "to": 0.5, "per-draw": 50},
        expected={"draws": 2, "size-1": 0.70711, "size-2": 0.5},
        optional={"holes": ""},
        series="mm",
        note="The sizes follow as size-1, size-2 and so on, in millimetres.",
    ),
    Formula(
        "delta-factor",
        "Shape of the zone in the die",
        {"half-angle": "degrees", "reduction": "percent of the area"},
        {"delta": ""},
        _delta_factor,
        "delta = (a/r) (1 + sqrt(1 - r))^2, a in radians",
        "wire-die maker's delta chart, reproduced within 1 percent",
        example={"half-angle": 6, "reduction": 20},
        expected={"delta": 1.879},
        note="High values, from light draws and blunt dies, tear the middle of the wire.",
    ),
)
