"""Registered formulas of mass and length."""

from __future__ import annotations

from temperbook.metal import mixture
from temperbook.metal.register import alloys
from temperbook.metal.register.formula import Answer, Formula, Given, Said, Tables
from temperbook.metal.register.inputs import alloy, number, section


def _mass(given: Given, tables: Tables) -> Answer:
    density = alloys.density(given, tables)
    grams = mixture.mass(density, given["section"].area, given["length"])
    return Answer(
        {
            "mass": grams,
            "troy-ounces": grams / mixture.TROY_OUNCE,
            "pennyweights": grams / mixture.PENNYWEIGHT,
        },
        (Said("density", {"density": density}),) if "alloy" in given else (),
    )


def _rolled_length(given: Given, tables: Tables) -> Answer:
    before, after = given["from"], given["to"]
    if after.area > before.area:
        raise ValueError(f"`{after.text}` is larger than `{before.text}`; work takes away")
    weighable = "alloy" in given or "density" in given
    density = alloys.density(given, tables) if weighable else 0.0
    if "length" in given:
        length = given["length"]
        grams = mixture.mass(density, before.area, length) if weighable else None
    else:
        grams = given["mass"]
        length = mixture.length_of(grams, density, before.area)
    found = {"length": mixture.length_after(length, before.area, after.area)}
    return Answer(found if grams is None else {**found, "mass": grams})


FORMULAS = (
    Formula(
        "mass",
        "Mass of stock",
        {
            "alloy": alloy(),
            "density": number("Density", "g/cm3"),
            "section": section("Section"),
            "length": number("Length", "mm"),
        },
        {"mass": "g", "troy-ounces": "ozt", "pennyweights": "dwt"},
        _mass,
        "m = rho A l; a troy ounce is 31.1034768 g, a pennyweight the twentieth part of it",
        "definition",
        example={"density": 10, "section": "square 6", "length": 100},
        expected={"mass": 36, "troy-ounces": 1.15743, "pennyweights": 23.1485},
        groups=((("alloy",), ("density",)),),
        notes={"density": "With the handbook's density of {density:g} g/cm3."},
        tables=("alloys",),
    ),
    Formula(
        "rolled-length",
        "Length after working",
        {
            "from": section("Section before"),
            "length": number("Length before", "mm"),
            "mass": number("Mass", "g"),
            "alloy": alloy(),
            "density": number("Density", "g/cm3"),
            "to": section("Section after"),
        },
        {"length": "mm", "mass": "g"},
        _rolled_length,
        "l1 = l0 A0/A1 (volume is kept); l0 = m/(rho A0)",
        "conservation of volume",
        example={"from": "square 6", "length": 60, "to": "square 3"},
        expected={"length": 240},
        groups=(
            (
                ("length",),
                ("length", "alloy"),
                ("length", "density"),
                ("mass", "alloy"),
                ("mass", "density"),
            ),
        ),
        note="What is cropped, filed or trimmed on the way is not counted.",
        tables=("alloys",),
    ),
)
