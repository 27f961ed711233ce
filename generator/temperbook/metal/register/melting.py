"""The registered formula of the heat that a melt needs."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from temperbook.metal import melting
from temperbook.metal.register import alloys
from temperbook.metal.register.formula import Answer, Formula, Given, Said, Tables
from temperbook.metal.register.inputs import alloy, composition, number


def _heat_to_melt(given: Given, tables: Tables) -> Answer:
    thermal = tables["thermal"]
    shares, ends = _metal(given, tables)
    means = {
        symbol: melting.mean_specific(heats["specific-heat"], heats.get("specific-heat-hot"))
        for symbol, heats in thermal.items()
        if "specific-heat" in heats
    }
    specific = melting.mixed(shares, means, "specific heat")
    mass, temperature = given["mass"], given["temperature"]
    if ends and temperature < ends[0]:
        whole = melting.heat_of_solid(mass, specific, temperature)
        outputs = {"to-solidus": whole, "melting": 0.0, "superheat": 0.0, "heat": whole}
        return Answer(outputs, (Said("solid", {"solidus": ends[0]}), *_torch(whole, tables)))
    latents = {s: heats["latent-heat"] for s, heats in thermal.items() if "latent-heat" in heats}
    latent = melting.mixed(shares, latents, "latent heat")
    found = melting.heat_to_liquid(mass, specific, latent, temperature, ends)
    parts = {
        "to-solidus": found.to_solidus,
        "melting": found.melting,
        "superheat": found.superheat,
        "heat": found.whole,
    }
    outputs = {name: value for name, value in parts.items() if value is not None}
    unknown = () if ends else (Said("range-unknown"),)
    return Answer(outputs, (*unknown, *_torch(found.whole, tables)))


def _metal(given: Given, tables: Tables) -> tuple[Mapping[str, float], tuple[float, float] | None]:
    """Composition and melting range [degC]; no range for several elements without a record."""
    if "elements" in given:
        shares: Mapping[str, float] = given["elements"]
        point = tables["thermal"].get(next(iter(shares)), {}).get("melting-point")
        return shares, (point, point) if len(shares) == 1 and point is not None else None
    plain = alloys.record(given, tables)
    facts = alloys.facts(plain)
    below = [k.lowest for q in ("solidus", "melting-point") for k in facts.of(q)]
    above = [k.highest for q in ("liquidus", "melting-point") for k in facts.of(q)]
    if not below or not above:
        raise ValueError(f"no melting range of {facts.name} is known; give its elements instead")
    return facts.composition, (min(below), max(above))


def _torch(heat: float, tables: Tables) -> tuple[Said, ...]:
    """What a torch must give so that its share [percent] is the heat [kJ] that is needed."""
    rows: list[Mapping[str, Any]] = tables["settings"].get("torch-share", [])
    if not rows or not rows[0]["low"] or not rows[0]["high"]:
        return ()
    low, high = rows[0]["low"], rows[0]["high"]
    values = {
        "low": low,
        "high": high,
        "said": rows[0]["said"],
        "least": 100 * heat / high,
        "most": 100 * heat / low,
    }
    return (Said("torch", values),)


FORMULAS = (
    Formula(
        "heat-to-melt",
        "Heat to melt a charge",
        {
            "alloy": alloy(),
            "elements": composition("Elements"),
            "mass": number("Mass", "g"),
            "temperature": number("Temperature of the melt", "degC"),
        },
        {"to-solidus": "kJ", "melting": "kJ", "superheat": "kJ", "heat": "kJ"},
        _heat_to_melt,
        "Q = m (c (T - 20) + L), c and L mixed by mass from the elements",
        "rule of Kopp and Neumann; conservation of energy",
        example={"elements": "Cu 100", "mass": 100, "temperature": 1185},
        expected={"to-solidus": 42.6, "melting": 20.6, "superheat": 4.0, "heat": 67.2},
        groups=((("alloy",), ("elements",)),),
        note="An estimate: one specific heat, the mean of cold and hot where both are known, "
        "serves from cold to liquid, and the elements' heats are mixed by mass as if they did not "
        "act on each other.",
        notes={
            "solid": "Below {solidus:g} degC it is still solid: this is the heat of warming alone.",
            "range-unknown": "The melting range of this mixture is not known here; the temperature "
            "is taken to lie above it.",
            "torch": "Of a torch's heat {low:g} to {high:g} percent reaches the metal ({said}): "
            "it must give {least:.0f} to {most:.0f} kJ.",
        },
        tables=("thermal", "settings", "alloys"),
        example_tables={
            "thermal": {"Cu": {"specific-heat": 0.4, "latent-heat": 206, "melting-point": 1085}},
            "settings": {},
            "alloys": {},
        },
    ),
)
