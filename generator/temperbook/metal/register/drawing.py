"""Registered formulas of drawing through a die."""

from __future__ import annotations

from math import log

from temperbook.metal import drawing, guards, rolling
from temperbook.metal.register.formula import Answer, Formula, Given, Input, Tables
from temperbook.metal.register.inputs import number
from temperbook.metal.register.rolling import GROOVER


def _draw_force(given: Given, tables: Tables) -> Answer:
    before, after = given["from"], given["to"]
    guards.smaller_after(before, after, "a draw", "diameter")
    strain = 2 * log(before / after)
    flow = rolling.mean_flow_stress(
        strain, given["strength-coefficient"], given["hardening-exponent"]
    )
    stress = drawing.draw_stress(before, after, given["half-angle"], given["friction"], flow)
    return Answer(
        {
            "true-strain": strain,
            "mean-flow-stress": flow,
            "draw-stress": stress,
            "force": drawing.draw_force(stress, after),
        }
    )


def _draw_schedule(given: Given, tables: Tables) -> Answer:
    before, after = given["from"], given["to"]
    per_draw = given.get("per-draw", 0) / 100
    if "holes" not in given:
        sizes = drawing.even_schedule(before, after, per_draw)
    elif "per-draw" in given:
        sizes = drawing.schedule_by_holes(before, after, per_draw, given["holes"])
    else:
        sizes = drawing.through_every_hole(before, after, given["holes"])
    return Answer({"draws": len(sizes), "sizes": sizes})


def _delta_factor(given: Given, tables: Tables) -> Answer:
    return Answer({"delta": drawing.delta_factor(given["half-angle"], given["reduction"] / 100)})


FORMULAS = (
    Formula(
        "draw-force",
        "Force of a draw",
        {
            "from": number("Diameter before", "mm"),
            "to": number("Diameter after", "mm"),
            "half-angle": number("Half-angle of the die", "degrees"),
            "friction": number("Coefficient of friction"),
            "strength-coefficient": number("Strength coefficient K", "MPa"),
            "hardening-exponent": number("Hardening exponent n"),
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
            "mean-flow-stress": 145.377,
            "draw-stress": 94.883,
            "force": 298.08,
        },
        note="The example's printed 94.1 MPa and 295.5 N do not follow from its printed inputs. In "
        "heavy draws it lies a fifth to a third above formulas whose friction grows along the die.",
    ),
    Formula(
        "draw-schedule",
        "Holes of a drawplate",
        {
            "from": number("Diameter before", "mm"),
            "to": number("Diameter after", "mm"),
            "per-draw": number("Most that one draw takes of the area", "percent"),
            "holes": Input("list", "Holes of the plate", "mm"),
        },
        {"draws": "count", "sizes": "mm"},
        _draw_schedule,
        "n = ceil(ln(A0/A1) / -ln(1 - r)); with holes, each time the smallest within reach",
        "conservation of volume",
        example={"from": 1.0, "to": 0.5, "per-draw": 50},
        expected={"draws": 2, "sizes": [0.70711, 0.5]},
        groups=((("per-draw",), ("holes",), ("per-draw", "holes")),),
        note="Without a limit of one draw, every hole of the list is used in turn.",
    ),
    Formula(
        "delta-factor",
        "Shape of the zone in the die",
        {
            "half-angle": number("Half-angle of the die", "degrees"),
            "reduction": number("Reduction of the area", "percent"),
        },
        {"delta": ""},
        _delta_factor,
        "delta = (a/r) (1 + sqrt(1 - r))^2, a in radians",
        "wire-die maker's delta chart, reproduced within 1 percent",
        example={"half-angle": 6, "reduction": 20},
        expected={"delta": 1.879},
        note="High values, from light draws and blunt dies, tear the middle of the wire.",
    ),
)
