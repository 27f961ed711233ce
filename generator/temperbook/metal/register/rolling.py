"""Registered formulas of flat rolling."""

from __future__ import annotations

from math import log

from temperbook.metal import guards, rolling
from temperbook.metal.register.formula import Answer, Formula, Given, Tables
from temperbook.metal.register.inputs import number

GROOVER = "Groover, Fundamentals of Modern Manufacturing"


def _max_draft(given: Given, tables: Tables) -> Answer:
    return Answer({"draft": rolling.max_draft(given["roll-radius"], given["friction"])})


def _roll_force(given: Given, tables: Tables) -> Answer:
    before, after = given["from"], given["to"]
    guards.smaller_after(before, after, "a pass", "thickness")
    strain = log(before / after)
    stress = rolling.mean_flow_stress(
        strain, given["strength-coefficient"], given["hardening-exponent"]
    )
    length = rolling.contact_length(given["roll-radius"], before - after)
    return Answer(
        {
            "contact-length": length,
            "true-strain": strain,
            "mean-flow-stress": stress,
            "force": rolling.roll_force(stress, given["width"], length),
        }
    )


FORMULAS = (
    Formula(
        "max-draft",
        "Greatest draft that the rolls bite",
        {
            "roll-radius": number("Radius of the rolls", "mm"),
            "friction": number("Coefficient of friction"),
        },
        {"draft": "mm"},
        _max_draft,
        "d = mu^2 R",
        f"{GROOVER}, Eq. 18.8",
        example={"roll-radius": 250, "friction": 0.12},
        expected={"draft": 3.6},
    ),
    Formula(
        "roll-force",
        "Force on the rolls, a first estimate",
        {
            "width": number("Width", "mm"),
            "from": number("Thickness before", "mm"),
            "to": number("Thickness after", "mm"),
            "roll-radius": number("Radius of the rolls", "mm"),
            "strength-coefficient": number("Strength coefficient K", "MPa"),
            "hardening-exponent": number("Hardening exponent n"),
        },
        {"contact-length": "mm", "true-strain": "", "mean-flow-stress": "MPa", "force": "N"},
        _roll_force,
        "L = sqrt(R (t0 - t1)); e = ln(t0/t1); Y = K e^n/(1 + n); F = Y w L",
        f"{GROOVER}, Eqs. 17.2, 18.10 and 18.11; example 18.1",
        example={
            "width": 300,
            "from": 25,
            "to": 22,
            "roll-radius": 250,
            "strength-coefficient": 275,
            "hardening-exponent": 0.15,
        },
        expected={
            "contact-length": 27.386,
            "true-strain": 0.12783,
            "mean-flow-stress": 175.64,
            "force": 1_443_057,
        },
        note="It underestimates: no plane-strain factor and no friction hill.",
    ),
)
