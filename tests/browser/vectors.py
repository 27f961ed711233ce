"""Questions to every formula with Python's answers, for the forms in the browser to give the same.

Of each formula: its example, chance inputs of its kinds (a seed keeps them the same), and inputs
that have to be refused. Nothing here knows a formula by name, so that a new one is asked as well.
"""

from __future__ import annotations

import math
import random
from collections.abc import Iterator, Mapping
from typing import Any

from temperbook.metal import register
from temperbook.metal.register.formula import Formula, Input
from temperbook.views import typed

SEED = 20_261_125
VALID = 24  # answers of each formula that chance has to bring
TRIES = 3000  # after which chance has failed
BEYOND = (0, -1, 1e-300, 1e300, 99.9999999, 100, 1000, 1e6)
NO_NUMBERS = ("", " ", "abc", "1,5", "1e5", "0x10", "½", "١", "- 1", "1.5.2", "9" * 400, True)
WRONG = {
    "number": NO_NUMBERS,
    "section": ("", "round", "round -1", "round 0", "oval 3", "flat 20", "flat 0x1", "Round 1",
                "square 1e3", "round 1.0 mm", " round  2 ", "flat 20 x 1.5", "round\u00a01"),
    "composition": ("", "Ag", "Ag 90", "Ag 90, Ag 10", "Xx 100", "ag 100", "Ag 90 Cu 10",
                    "Ag 100.04", "Ag 100.06", "Ag 90, Cu 10,", "Ag92.5,Cu7.5", "Pb 50, Sn 50",
                    "Cd 100", {"Ag": 50}, {"Ag": -1, "Cu": 101}, {"Ag": "90", "Cu": 10}),
    "choice": ("", "oval", "Round", " area"),
    "alloy": ("", "silver", "silver/none", "constructor"),
    "list": ("", ",", "1,x", "1.0;0.9", "0", "-1, 1", "1e3"),
    "flag": ("", "yes", "True", "true", "false", True, False),
    "name": ("", "none", "0", "00", "1/0", "07", "-1", "99", "1 1/2", "L½", "Z 1/3", "toString",
             18, 7.5, True),
}  # fmt: skip

Question = dict[str, Any]


def all_of(tables: Mapping[str, Any]) -> dict[str, list[Question]]:
    """Every question by formula: `inputs` and what Python says to them."""
    return {
        formula.id: [asked(formula, inputs, tables) for inputs in questions(formula, tables)]
        for formula in register.FORMULAS.values()
    }


def asked(formula: Formula, inputs: Mapping[str, Any], tables: Mapping[str, Any]) -> Question:
    """A question with its answer: outputs, units and notes, or the sentence that refuses."""
    try:
        answer = register.compute(formula.id, inputs, tables)
    except ValueError as error:
        return {"inputs": dict(inputs), "refused": str(error)}
    return {
        "inputs": dict(inputs),
        "outputs": answer.outputs,
        "units": {name: formula.unit_in(name, answer) for name in answer.outputs},
        "notes": [list(note) for note in formula.said(answer)],
    }


def questions(formula: Formula, tables: Mapping[str, Any]) -> Iterator[dict[str, Any]]:
    """Inputs of a formula: its example, valid ones by chance, and wrong ones."""
    chance = random.Random(f"{SEED} {formula.id}")
    yield dict(formula.example)
    good = []
    for _ in range(TRIES):
        inputs = _by_chance(formula, tables, chance)
        yield inputs
        if "outputs" in asked(formula, inputs, tables):
            good.append(inputs)
        if len(good) == VALID:
            break
    assert len(good) == VALID, f"{formula.id}: {len(good)} valid questions in {TRIES}"
    for inputs in good[:3]:
        yield from _wrong(formula, inputs)
    yield {}
    yield {name: value for inputs in good for name, value in inputs.items()}


def _by_chance(
    formula: Formula, tables: Mapping[str, Any], chance: random.Random
) -> dict[str, Any]:
    """Inputs of the right kinds; those of a group in one of its ways."""
    ways = [chance.choice(group) for group in formula.groups]
    chosen = set(formula.needed()) | {name for way in ways for name in way}
    may = [n for n, i in formula.inputs.items() if i.open and n not in formula.grouped()]
    chosen |= {name for name in may if chance.random() < 0.5}
    return {
        name: _value(name, declared, formula, tables, chance)
        for name, declared in formula.inputs.items()
        if name in chosen
    }


def _value(
    name: str, declared: Input, formula: Formula, tables: Mapping[str, Any], chance: random.Random
) -> Any:
    if declared.kind == "number":
        return _number(name, declared, formula, chance)
    if declared.kind == "section":
        return _section(name, chance)
    if declared.kind == "composition":
        return _composition(tables, chance)
    if declared.kind == "alloy":
        return chance.choice(sorted(tables["alloys"]))
    if declared.kind == "choice":
        return chance.choice(declared.choices)
    if declared.kind == "flag":
        return chance.choice([True, False, "true", "false"])
    if declared.kind == "list":
        return _holes(formula, chance)
    return _name(tables, chance)


def _number(name: str, declared: Input, formula: Formula, chance: random.Random) -> float | str:
    """About as large as in the example; a few digits, so that ties of rounding come up."""
    at = formula.example.get(name, declared.default)
    at = float(at) if isinstance(at, int | float) and at else 10.0
    value = at * math.exp(chance.uniform(-1, 1))
    value = float(f"{value:.{chance.choice([2, 3, 15])}g}")
    return f"{value:.6f}" if chance.random() < 0.2 else value


def _section(name: str, chance: random.Random) -> str:
    larger = 1.0 if name == "to" else 3.0
    size = round(larger * chance.uniform(0.3, 3), chance.choice([0, 1, 3])) or 1
    shape = chance.choice(["round", "round", "square", "square", "flat"])
    if shape == "flat":
        return f"flat {round(size * chance.uniform(1, 20), 2)}x{size}"
    return f"{shape} {size}"


def _composition(tables: Mapping[str, Any], chance: random.Random) -> str:
    symbols = chance.sample(["Ag", "Cu", "Au", "Zn", "Ni", "Sn", "Pd", "Pt"], chance.randint(1, 4))
    cuts = sorted(chance.sample(range(1, 1000), len(symbols) - 1))
    shares = [b - a for a, b in zip([0, *cuts], [*cuts, 1000], strict=True)]
    return ", ".join(f"{s} {share / 10:g}" for s, share in zip(symbols, shares, strict=True))


def _holes(formula: Formula, chance: random.Random) -> Any:
    """A plate in which a hole of the example's end may be found."""
    end = float(formula.example.get("to", 1.0))
    sizes = [round(end * (1 + 0.08 * step), 3) for step in range(chance.randint(1, 20))]
    chance.shuffle(sizes)
    return sizes if chance.random() < 0.3 else ", ".join(map(str, sizes))


def _name(tables: Mapping[str, Any], chance: random.Random) -> Any:
    """A word of any table that names are taken from: a gauge's number, a ring size, a metal."""
    gauges = [number for table in tables["gauges"].values() for number in table]
    sizes = [size for system in tables["ring-sizes"].values() for size in system["sizes"]]
    metals = [row["metal"] for row in tables["activation-energies"]]
    fractions = ["", " 1/2", "1/4", "½"]
    rings = [f"{n}{chance.choice(fractions)}" for n in range(1, 15)] + list("ABHLNQTZ")
    words = [w for w in (gauges, sizes, metals, rings, [str(n) for n in range(40, 76)]) if w]
    return chance.choice(chance.choice(words))


def _wrong(formula: Formula, inputs: Mapping[str, Any]) -> Iterator[dict[str, Any]]:
    """The same inputs with one of them left out, none of its kind, or far beyond sense."""
    for name, declared in formula.inputs.items():
        if name not in inputs:
            yield {**inputs, name: "1"}  # a second way of the same group, or none of its kind
            continue
        yield {n: value for n, value in inputs.items() if n != name}
        yield {**inputs, name: None}
        for value in WRONG[declared.kind]:
            yield {**inputs, name: value}
        if declared.kind == "number":
            for value in BEYOND:
                yield {**inputs, name: value}
    yield {**inputs, "colour": "blue", "and": 1}


UNITS = ("mm", "degC", "g", "MPa", "min", "percent", "per-mille", "", "degrees", "um", "kJ/mol",
         "g/cm3", "ct")  # fmt: skip
NUMBERS = ("1", "0.04", "-7.5", "+3", ".5", "2.", "1e3", "", "one", "1 000", "1,5")


def all_typed(tables: Mapping[str, Any]) -> list[tuple[str, dict[str, str], dict[str, Any]]]:
    """What people may type: the text, the input it is typed for, and what Python reads."""
    return [
        (text, {"kind": declared.kind, "unit": declared.unit}, _read(text, declared, tables))
        for text, declared in _typed()
    ]


def _read(text: str, declared: Input, tables: Mapping[str, Any]) -> dict[str, Any]:
    try:
        return {"value": typed.read(text, declared, lambda: tables["gauges"])}
    except ValueError as error:
        return {"refused": str(error)}


def _typed() -> Iterator[tuple[str, Input]]:
    for unit in UNITS:
        declared = Input("number", "", unit)
        for written in (*typed.WRITTEN, "%", "deg", "furlong", "MM"):
            yield f"12.5{written}", declared
        for number in NUMBERS:
            yield number, declared
            yield f" {number} mm ", declared
        for gauge in ("18awg", "2/0 AWG", "20swg", "7/0swg", "99bwg", "0awg", "00awg", "1.5awg"):
            yield gauge, declared
    sections = ("round 0.04in", "round 18awg", "square 6 mm", "flat 1in x 0.05in", "flat 20x1.5",
                "flat 1 x 0.05in", "flat 20\u00d71.5 mm", "round 1 kg", "flat 1x2x3", "round",
                "flat 20 x 18swg", "oval 3", "round x", "square 1.0000000004")  # fmt: skip
    for text in sections:
        yield text, Input("section", "", "mm")
    for text in ("1.0, 0.9, 0.8", "0.04in, 18awg", "1;2", "", "1,", "1, x", "1kg, 2"):
        yield text, Input("list", "", "mm")
    for kind in ("composition", "choice", "alloy", "flag", "name"):
        yield "Ag 90, Cu 10", Input(kind, "")
