"""Registered formulas of charges and of changing a composition."""

from __future__ import annotations

from temperbook.metal import alloying
from temperbook.metal.register import alloys
from temperbook.metal.register.formula import Answer, Formula, Given, Said, Tables, listed
from temperbook.metal.register.inputs import alloy, composition, number


def _alloying(given: Given, tables: Tables) -> Answer:
    stock, target = given["stock"], given["target"]
    alloying.hold_meltable(stock)
    alloying.hold_meltable(target)
    found = alloying.least_addition(stock, target, given["mass"])
    least = sum(found.add.values())
    full = [symbol for symbol, share in stock.items() if share > 0 and found.add[symbol] == 0]
    note = Said("limits", {"elements": listed(full, "and")}) if least > 0 else Said("same")
    return Answer(
        {**found.add, "least-metal-added": least, "new-mass": found.new_mass},
        (note,) if full else (),
    )


def _melt_charge(given: Given, tables: Tables) -> Answer:
    if "alloy" in given:
        alloys.hold_bench(alloys.record(given, tables))
    shares = alloys.composition(given, tables)
    alloying.hold_meltable(shares)
    crop, scalp, loss = (given[name] / 100 for name in ("crop", "scalp", "loss"))
    charge = alloying.charge(given["mass"], crop, scalp, loss)
    return Answer({"charge": charge, **{e: charge * part / 100 for e, part in shares.items()}})


def _change_fineness(given: Given, tables: Tables) -> Answer:
    mass = given["mass"]
    add, fine = alloying.fineness_addition(mass, given["fineness"], given["target"])
    note = "fine" if fine else "alloying" if add > 0 else "same"
    return Answer({"add": add, "new-mass": mass + add}, (Said(note),))


FORMULAS = (
    Formula(
        "alloying",
        "From one composition to another",
        {
            "stock": composition("Composition of the stock"),
            "target": composition("Composition wanted"),
            "mass": number("Mass of the stock", "g"),
        },
        {"least-metal-added": "g", "new-mass": "g"},
        _alloying,
        "new mass = max over elements of m w_stock/w_target; add = what is missing of each",
        "conservation of mass; Gee, The Silversmith's Handbook, 5th ed., p. 64, alloy No. 2",
        example={"stock": "Ag 100", "target": "Ag 80, Cu 20", "mass": 480},
        expected={"Ag": 0, "Cu": 120, "least-metal-added": 120, "new-mass": 600},
        series="g",
        note="What to add of each element stands under its symbol; losses are left out.",
        notes={
            "limits": "The stock has relatively most of {elements}: that alone sets the new mass, "
            "and none of it is added.",
            "same": "The stock already has this composition.",
        },
    ),
    Formula(
        "melt-charge",
        "What to melt for a finished mass",
        {
            "alloy": alloy(),
            "composition": composition("Composition"),
            "mass": number("Finished mass", "g"),
            "crop": number("Cropped", "percent"),
            "scalp": number("Scalped", "percent"),
            "loss": number("Lost in melting", "percent"),
        },
        {"charge": "g"},
        _melt_charge,
        "charge = m / ((1 - crop)(1 - scalp)(1 - loss))",
        "conservation of mass; crop, scalp and loss are the workshop's own",
        example={"composition": "Ag 92.5, Cu 7.5", "mass": 95, "crop": 0, "scalp": 5, "loss": 0},
        expected={"charge": 100, "Ag": 92.5, "Cu": 7.5},
        groups=((("alloy",), ("composition",)),),
        series="g",
        note="Each element's part of the charge stands under its symbol.",
        tables=("alloys",),
    ),
    Formula(
        "change-fineness",
        "From one fineness to another",
        {
            "mass": number("Mass", "g"),
            "fineness": number("Fineness now", "per-mille"),
            "target": number("Fineness wanted", "per-mille"),
        },
        {"add": "g", "new-mass": "g"},
        _change_fineness,
        "down: m (f/t - 1) of alloying metal; up: m (t - f)/(1000 - t) of fine metal",
        "conservation of mass",
        example={"mass": 100, "fineness": 750, "target": 500},
        expected={"add": 50, "new-mass": 150},
        notes={
            "alloying": "What is added is alloying metal, without any of the fine metal.",
            "fine": "What is added is fine metal of 1000 parts in a thousand.",
            "same": "It has this fineness already.",
        },
    ),
)
