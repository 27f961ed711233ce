"""The registered formula of an anneal at another temperature."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from temperbook.metal import annealing
from temperbook.metal.register import alloys
from temperbook.metal.register.formula import Answer, Formula, Given, Said, Tables, listed
from temperbook.metal.register.inputs import alloy, choice, name, number


def _anneal_equivalent(given: Given, tables: Tables) -> Answer:
    time, temperature, to = given["time"], given["temperature"], given["to"]
    notes = [] if "activation-energy" in given else [_energy(given, tables)]
    energy = given["activation-energy"] if not notes else notes[0].values["energy"]
    found = annealing.equivalent_time(time, float(energy), temperature, to)
    if "alloy" in given:
        _hold_one_phase(alloys.record(given, tables), temperature, to)
    else:
        notes.append(Said("unchecked"))
    return Answer({"time": found}, tuple(notes))


def _energy(given: Given, tables: Tables) -> Said:
    rows = tables["activation-energies"]
    metal, mechanism = given["metal"], given["mechanism"]
    for row in rows:
        if row["metal"] == metal and row["mechanism"] == mechanism:
            said = {"energy": row["energy"], "metal": metal, "how": row["said"]}
            return Said("energy", {**said, "mechanism": mechanism})
    known = [f"{row['metal']} {row['mechanism']}" for row in rows]
    raise ValueError(
        f"no activation energy of {metal} {mechanism} is known"
        + (f"; there is {listed(known, 'and')}" if known else "")
    )


def _hold_one_phase(plain: Mapping[str, Any], temperature: float, to: float) -> None:
    """Refuses temperatures [degC] between which the alloy melts, orders or must not dwell."""
    low, high = min(temperature, to), max(temperature, to)
    facts = alloys.facts(plain)
    melts = [k.lowest for q in ("solidus", "melting-point") for k in facts.of(q)]
    if melts and high >= min(melts):
        raise ValueError(f"{facts.name} begins to melt at {min(melts):g} degC")
    for known in facts.of("no-dwell"):
        below = known.low is None or high >= known.low
        if below and (known.high is None or low <= known.high):
            raise ValueError(f"{facts.name} must not linger at {_band(known.low, known.high)}")
    orders = [bound["high"] for bound in plain["boundaries"]]
    if orders and low <= max(orders):
        raise ValueError(
            f"{facts.name} orders or changes phase below {max(orders):g} degC; no anneal there "
            "is equal to one above"
        )


def _band(low: float | None, high: float | None) -> str:
    if low is None or high is None:
        return f"{low:g} degC or above" if low is not None else f"{high:g} degC or below"
    return f"{low:g} degC" if low == high else f"{low:g} to {high:g} degC"


FORMULAS = (
    Formula(
        "anneal-equivalent",
        "The same anneal at another temperature",
        {
            "metal": name("Metal", choices_of="activation-energies/metal"),
            "mechanism": choice("What happens in it", "recrystallisation", "grain-growth"),
            "activation-energy": number("Activation energy", "kJ/mol"),
            "temperature": number("Temperature", "degC"),
            "time": number("Time there", "min"),
            "to": number("Other temperature", "degC"),
            "alloy": alloy(optional=True),
        },
        {"time": "min"},
        _anneal_equivalent,
        "t2 = t1 exp(Q/R (1/T2 - 1/T1)), in kelvin",
        "Arrhenius' law",
        example={"activation-energy": 123, "temperature": 160, "time": 60, "to": 150},
        expected={"time": 134.485},
        groups=((("metal", "mechanism"), ("activation-energy",)),),
        note="Approximate: one activation energy, measured on one metal worked in one way, stands "
        "for all that happens, and warming up is not counted. For a furnace alone; a torch holds "
        "no temperature.",
        notes={
            "energy": "Activation energy of {mechanism} in {metal}: {energy:g} kJ/mol ({how}).",
            "unchecked": "Without the alloy's name nothing is held against melting, ordering or "
            "bands in which it must not linger.",
        },
        tables=("activation-energies", "alloys"),
        example_tables={"activation-energies": [], "alloys": {}},
    ),
)
