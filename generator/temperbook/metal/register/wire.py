"""Registered formulas of what a wire bears."""

from __future__ import annotations

from temperbook.metal import drawing, wire
from temperbook.metal.facts import AlloyFacts, Known
from temperbook.metal.register import alloys
from temperbook.metal.register.formula import Answer, Formula, Given, Said, Tables, Value
from temperbook.metal.register.inputs import alloy, number
from temperbook.metal.register.rolling import GROOVER

NEWTONS = 9.80665  # in a kilogram-force, exact
MOST_SAID = 1e6  # percent of the strength; beyond it a number says nothing more
HARD = ("hard", "spring", "extra-hard", "extra-spring")


def _breaking_load(given: Given, tables: Tables) -> Answer:
    load = wire.breaking_load(given["diameter"], given["tensile"])
    return Answer({"load": load, "load-kgf": load / NEWTONS})


def _grains_across(given: Given, tables: Tables) -> Answer:
    return Answer({"number": wire.grains_across(given["diameter"], given["grain-size"])})


def _draw_margin(given: Given, tables: Tables) -> Answer:
    diameter, before = given["diameter"], given["from"]
    drawn, annealed, notes = _strengths(given, tables)
    if annealed > drawn:
        raise ValueError("annealed wire is not stronger than drawn wire")
    die = given["half-angle"], given["friction"]
    used = drawing.draw_stress(before, diameter, *die, 1.0)
    nick = wire.nick_share(diameter, given["nick"])
    outputs = {
        "draw-stress": used * drawn,
        "draw-stress-annealed": used * annealed,
        "strength-used": 100 * used,
        "breaking-load": wire.breaking_load(diameter, drawn),
        "breaking-load-annealed": wire.breaking_load(diameter, annealed),
        "draw-force": drawing.draw_force(used * drawn, diameter),
        "draw-force-annealed": drawing.draw_force(used * annealed, diameter),
        "nick-share": 100 * nick,
        "nick-load": nick * wire.breaking_load(diameter, drawn),
        "nick-load-annealed": nick * wire.breaking_load(diameter, annealed),
    }
    grain = _grain(given, tables)
    if grain:
        outputs["grains-across"] = wire.grains_across(diameter, grain)
        notes.append(Said("grain", {"grain": grain}))
    return Answer(outputs, (*notes, *_decisive(outputs, given)))


def _decisive(outputs: dict[str, float], given: Given) -> list[Said]:
    """What the numbers show to break it, and nothing more."""
    die = Said("die", {"half-angle": given["half-angle"], "friction": given["friction"]})
    used, nick = outputs["strength-used"], outputs["nick-share"]
    if used >= 100:
        return [die, Said("draw-breaks", {"used": min(used, MOST_SAID)})]
    if used + nick >= 100:
        return [die, Said("nick-breaks", {"used": used, "nick": nick, "depth": given["nick"]})]
    load = outputs["breaking-load"] - outputs["draw-force"]
    soft = outputs["breaking-load-annealed"] - outputs["draw-force-annealed"]
    return [die, Said("load", {"used": used, "left": load, "left-annealed": soft})]


def _strengths(given: Given, tables: Tables) -> tuple[float, float, list[Said]]:
    """Strength [MPa] of drawn and of annealed wire, given or the alloy's lowest readings."""
    if "alloy" not in given:
        return given["drawn"], given["annealed"], []
    facts = alloys.facts(alloys.record(given, tables))
    soft, hard = _tensile(facts, ("annealed",)), _tensile(facts, HARD)
    if soft is None or hard is None:
        raise ValueError(
            f"the strength of {facts.name} is not known both drawn and annealed; give drawn and "
            "annealed instead"
        )
    values: dict[str, Value] = {
        "name": facts.name,
        "drawn": hard.lowest,
        "annealed": soft.lowest,
        "form": hard.form or "stock",
        "state": hard.state,
    }
    return hard.lowest, soft.lowest, [Said("strengths", values)]


def _tensile(facts: AlloyFacts, states: tuple[str, ...]) -> Known | None:
    """The alloy's strength in the first of these states that it has: wire first."""
    for state in states:
        fitting = [k for k in facts.of("tensile") if k.state == state and not k.name]
        for form in ("wire", ""):
            for known in fitting:
                if known.form == form:
                    return known
        if fitting:
            return fitting[0]
    return None


def _grain(given: Given, tables: Tables) -> float | None:
    if "grain-size" in given:
        return float(given["grain-size"])
    if "alloy" not in given:
        return None
    facts = alloys.facts(alloys.record(given, tables))
    sizes = [k.highest for k in facts.of("grain-size") if k.state == "annealed" and not k.name]
    return sizes[0] if sizes else None


FORMULAS = (
    Formula(
        "breaking-load",
        "Load that breaks a wire",
        {"diameter": number("Diameter", "mm"), "tensile": number("Tensile strength", "MPa")},
        {"load": "N", "load-kgf": "kgf"},
        _breaking_load,
        "F = pi d^2/4 s",
        "definition of tensile strength",
        example={"diameter": 1.0, "tensile": 300},
        expected={"load": 235.62, "load-kgf": 24.027},
    ),
    Formula(
        "grains-across",
        "Grains across a wire",
        {"diameter": number("Diameter", "mm"), "grain-size": number("Grain size", "mm")},
        {"number": "count"},
        _grains_across,
        "n = d/g",
        "definition",
        example={"diameter": 0.5, "grain-size": 0.05},
        expected={"number": 10},
    ),
    Formula(
        "draw-margin",
        "What a draw leaves of a wire's strength",
        {
            "diameter": number("Diameter behind the hole", "mm"),
            "from": number("Diameter before", "mm"),
            "alloy": alloy(),
            "drawn": number("Strength as drawn", "MPa"),
            "annealed": number("Strength annealed", "MPa"),
            "half-angle": number("Half-angle of the die", "degrees", default=6.0),
            "friction": number("Coefficient of friction", default=0.1),
            "nick": number("Depth of a nick", "mm", default=0.05),
            "grain-size": number("Grain size", "mm", optional=True),
        },
        {
            "draw-stress": "MPa",
            "draw-stress-annealed": "MPa",
            "strength-used": "percent",
            "breaking-load": "N",
            "breaking-load-annealed": "N",
            "draw-force": "N",
            "draw-force-annealed": "N",
            "nick-share": "percent",
            "nick-load": "N",
            "nick-load-annealed": "N",
            "grains-across": "count",
        },
        _draw_margin,
        "s/Y = (1 + mu/tan a) phi ln(A0/A1); F = Y pi d^2/4; nick: segment of the section",
        f"{GROOVER}, Eqs. 18.32 to 18.34; geometry",
        example={"diameter": 0.5, "from": 0.55, "drawn": 400, "annealed": 220},
        expected={"strength-used": 42.533, "breaking-load": 78.54, "nick-share": 5.204},
        groups=((("alloy",), ("drawn", "annealed")),),
        note="The wire is taken to leave the hole as strong as it went in. Annealed wire hardens "
        "on the way, so it is somewhat better off than said here.",
        notes={
            "strengths": "{name}: {drawn:g} MPa as drawn ({form}, {state}), {annealed:g} MPa "
            "annealed, the lowest readings of its page.",
            "grain": "With grains of {grain:g} mm.",
            "die": "With a half-angle of {half-angle:g} degrees and a friction of {friction:g}; "
            "where you give none, they are an assumption of the handbook.",
            "draw-breaks": "The draw itself asks for {used:.0f} percent of the strength: it "
            "breaks, drawn or annealed. Take a smaller step.",
            "nick-breaks": "The draw asks for {used:.0f} percent of the strength and a nick of "
            "{depth:g} mm takes {nick:.0f} percent of the section: such a nick decides.",
            "load": "Drawn or annealed, the draw asks for the same share of the strength, "
            "{used:.0f} percent. What differs is the load that is left for a jerk, a nick or a "
            "tight hole: {left:.1f} N as drawn, {left-annealed:.1f} N annealed.",
        },
        tables=("alloys",),
        example_tables={"alloys": {}},
    ),
)
