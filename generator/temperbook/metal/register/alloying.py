"""Registered formulas of charges and of changing a composition."""

from __future__ import annotations

from typing import Any

from temperbook.metal import alloying, compositions
from temperbook.metal.register.formula import COMPOSITION, Formula, Outputs, number, share


def _alloying(**given: Any) -> Outputs:
    stock, target = compositions.parse(given["stock"]), compositions.parse(given["target"])
    alloying.hold_meltable(stock)
    alloying.hold_meltable(target)
    found = alloying.least_addition(stock, target, number(given, "mass"))
    return {
        **found.add,
        "least-metal-added": sum(found.add.values()),
        "new-mass": found.new_mass,
    }


def _melt_charge(**given: Any) -> Outputs:
    shares = compositions.parse(given["composition"])
    alloying.hold_meltable(shares)
    parts = (share(given, name) for name in ("crop", "scalp", "loss"))
    charge = alloying.charge(number(given, "mass"), *parts)
    return {"charge": charge, **{e: charge * part / 100 for e, part in shares.items()}}


def _change_fineness(**given: Any) -> Outputs:
    mass = number(given, "mass")
    add, _ = alloying.fineness_addition(mass, number(given, "fineness"), number(given, "target"))
    return {"add": add, "new-mass": mass + add}


FORMULAS = (
    Formula(
        "alloying",
        "From one composition to another",
        {"stock": COMPOSITION, "target": COMPOSITION, "mass": "g"},
        {"least-metal-added": "g", "new-mass": "g"},
        _alloying,
        "new mass = max over elements of m w_stock/w_target; add = what is missing of each",
        "conservation of mass; Gee, The Silversmith's Handbook, 5th ed., p. 64, alloy No. 2",
        example={"stock": "Ag 100", "target": "Ag 80, Cu 20", "mass": 480},
        expected={"Ag": 0, "Cu": 120, "least-metal-added": 120, "new-mass": 600},
        series="g",
        note="What to add of each element stands under its symbol; losses are left out.",
    ),
    Formula(
        "melt-charge",
        "What to melt for a finished mass",
        {
            "composition": COMPOSITION,
            "mass": "g",
            "crop": "percent",
            "scalp": "percent",
            "loss": "percent",
        },
        {"charge": "g"},
        _melt_charge,
        "charge = m / ((1 - crop)(1 - scalp)(1 - loss))",
        "conservation of mass; crop, scalp and loss are the workshop's own",
        example={
            "composition": "Ag 92.5, Cu 7.5",
            "mass": 95,
            "crop": 0,
            "scalp": 5,
            "loss": 0,
        },
        expected={"charge": 100, "Ag": 92.5, "Cu": 7.5},
        series="g",
        note="Each element's part of the charge stands under its symbol.",
    ),
    Formula(
        "change-fineness",
        "From one fineness to another",
        {"mass": "g", "fineness": "per mille", "target": "per mille"},
        {"add": "g", "new-mass": "g"},
        _change_fineness,
        "down: m (f/t - 1) of alloying metal; up: m (t - f)/(1000 - t) of fine metal",
        "conservation of mass",
        example={"mass": 100, "fineness": 750, "target": 500},
        expected={"add": 50, "new-mass": 150},
        note="To a lower fineness add alloying metal, to a higher one fine metal.",
    ),
)
