"""Registered formulas of heat judged by eye and instrument."""

from __future__ import annotations

from temperbook.metal import brightness, heat_colour
from temperbook.metal.register.formula import (
    FLAG,
    NAMES,
    TEXT,
    Answer,
    Formula,
    Given,
    Said,
    Tables,
)
from temperbook.metal.register.inputs import flag, number


def _heat_colour(given: Given, tables: Tables) -> Answer:
    temperature = given["temperature"]
    heat_colour.hold_glowing(temperature)
    seen = heat_colour.glow(temperature, tables["observer"])
    shown = heat_colour.shown_colour(
        seen, heat_colour.SOOT, heat_colour.DIMMEST, heat_colour.BRIGHTEST
    )
    names = {
        observer: heat_colour.named(rows, temperature)
        for observer, rows in tables["colour-names"].items()
    }
    return Answer(
        {
            "x": seen.x,
            "y": seen.y,
            "luminance": seen.luminance,
            "hex": shown,
            "in-gamut": seen.in_gamut,
            "seen-as": names,
        },
        () if seen.in_gamut else (Said("clipped"),),
    )


def _brightness_temperature(given: Given, tables: Tables) -> Answer:
    at = given["temperature"], given["emissivity"], given["wavelength"]
    found = brightness.true(*at) if given["find"] else brightness.apparent(*at)
    hotter = max(found, given["temperature"])
    valid = brightness.within_wien(hotter, given["wavelength"])
    return Answer({"temperature": found}, () if valid else (Said("beyond-wien"),))


FORMULAS = (
    Formula(
        "heat-colour",
        "Colour of heat",
        {"temperature": number("Temperature", "degC")},
        {
            "x": "",
            "y": "",
            "luminance": "cd/m2",
            "hex": TEXT,
            "in-gamut": FLAG,
            "seen-as": NAMES,
        },
        _heat_colour,
        "Planck's law summed over the CIE 1931 observer; sRGB hue, brightness by its logarithm",
        "CIE 1931 2 degree observer; IEC 61966-2-1; chromaticity of 1200 K in the Radiance project",
        example={"temperature": 926.85},
        expected={"x": 0.6250510, "y": 0.3674494, "in-gamut": False},
        note="Of a black body: oxidised metal in a dim shop comes near it, clean bright metal "
        "gives far less light at the same heat and looks cooler.",
        notes={
            "clipped": "Redder than a screen or paper can show: the colour code is the nearest "
            "hue that they have."
        },
        tables=("observer", "colour-names"),
    ),
    Formula(
        "brightness-temperature",
        "Why bright metal looks cooler than it is",
        {
            "temperature": number("Temperature", "degC"),
            "emissivity": number("Emissivity of the surface"),
            "wavelength": number("Wavelength of the pyrometer", "um", default=0.65),
            "find": flag("The temperature given is the apparent one"),
        },
        {"temperature": "degC"},
        _brightness_temperature,
        "1/Ta = 1/T - (L/c2) ln e, in kelvin",
        "Wien's law; NPL, Tables of physical and chemical constants, 2.3.4",
        example={"temperature": 600, "emissivity": 0.1, "find": "true"},
        expected={"temperature": 687.2},
        note="With find=true the temperature given is the apparent one, and the true one is found.",
        notes={
            "beyond-wien": "So hot and at so long a wavelength Wien's law no longer serves well."
        },
    ),
)
