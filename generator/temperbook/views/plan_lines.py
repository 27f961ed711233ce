"""A working plan as lines of text, from its plain data."""

from __future__ import annotations

from typing import Any

from temperbook.views import formatting

Data = dict[str, Any]
PASSES_IN_A_LINE = 8


def lines(plan: Data) -> list[str]:
    """The plan for a terminal."""
    temper = f", {plan['temper']}" if plan["temper"] else ""
    found = [
        f"{plan['name']}: {plan['start']['text']} ({plan['start']['state']}) "
        f"to {plan['end']['text']}{temper}",
        f"{_anneals(plan['anneals'])}; {plan['total_reduction_area_pct']:.1f} % of the area in all"
        f" (true strain {plan['true_strain']:.2f})",
        "",
    ]
    for number, run in enumerate(plan["runs"], 1):
        found += _run(number, run)
    found += _amounts(plan)
    for label, key in (("look out", "warnings"), ("note", "notes")):
        found += [f"{label}: {one['text']}" for one in plan[key]]
    found += [f"{c['signal']}: {c['text']}" for c in plan["cautions"][:MOST_CAUTIONS]]
    return [*found, "Local codes, the supplier's safety data sheet and licensed practice decide."]


MOST_CAUTIONS = 6


def _anneals(number: int) -> str:
    return "no anneal" if number == 0 else f"{number} anneal{'s' if number > 1 else ''}"


def _run(number: int, run: Data) -> list[str]:
    found = [
        f"{number}. {run['from']['text']} -> {run['to']['text']}, {run['process']}: "
        f"{reductions(run)}"
    ]
    found += [f"   {text}" for text in (ceiling(run), hardness(run), *_passes(run)) if text]
    if run["anneal"]:
        found.append(f"   then anneal: {anneal(run['anneal'])}")
    return [*found, ""]


def reductions(run: Data) -> str:
    """`44.7 % of the area, 25.7 % of the diameter`."""
    said = [f"{run['reduction_area_pct']:.1f} % of the area"]
    square = (run.get("to") or run["now"])["shape"] == "square"
    for basis in ("diameter", "thickness"):
        key = f"reduction_{basis}_pct"
        if key in run:
            said.append(f"{run[key]:.1f} % of the {'side' if square else basis}")
    return ", ".join(said)


def ceiling(run: Data) -> str:
    """The limits of a run with their provenance."""
    said = []
    for name, label in (("ceiling", "at most"), ("floor", "at least")):
        if run[f"{name}_pct"] is not None:
            how = HOW.get(run[f"{name}_how"], run[f"{name}_how"])
            said.append(f"{label} {run[f'{name}_pct']:.0f} % of the area ({how})")
    return "; ".join(said)


HOW = {
    "given": "as asked",
    "practice": "common practice, no source",
    "memory": "from memory, unverified",
    "quoted": "published",
    "converted": "published",
    "chosen": "published, chosen among readings",
    "applied": "published for the system or family",
    "computed": "computed",
}


def hardness(run: Data) -> str:
    """`120–135 HV after it`, or why it is not known."""
    known = run["hardness"]
    if not known:
        return run["hardness_why"] or ""
    values = range_of(known["low"], known["high"], 0)
    return f"{values} {known['unit']} after it (from the alloy's table)"


def range_of(low: float | None, high: float | None, decimals: int) -> str:
    """A range with so many decimals."""
    return formatting.ends((low, high), decimals)


def _passes(run: Data) -> list[str]:
    sizes = [one["to"]["text"].split(" ")[1] for one in run["passes"]]
    head = f"{len(sizes)} pass{'' if len(sizes) == 1 else 'es'}: "
    rows = [sizes[i : i + PASSES_IN_A_LINE] for i in range(0, len(sizes), PASSES_IN_A_LINE)]
    return [
        (head if position == 0 else " " * len(head)) + "  ".join(row)
        for position, row in enumerate(rows)
    ]


def anneal(parts: Data) -> str:
    """The anneal between two runs in one line."""
    said = [parts["heating"]["text"].lower()] if parts["heating"] else []
    heat, time = parts["heat"], parts["time"]
    if heat:
        said.append(f"{range_of(heat['low'], heat['high'], 0)} °C")
        if parts["colour"]:
            said.append(parts["colour"]["text"].lower())
        if heat["heat"] not in (None, "any"):
            said.append(heat["heat"])
    else:
        said.append("no published heat")
    if time:
        said.append(f"hold {range_of(time['low'], time['high'], 1)} {time['unit']}")
    for key, label in (("avoid", "do not linger:"), ("quench_from", "quench from:")):
        if parts[key]:
            said.append(f"{label} {range_of(parts[key]['low'], parts[key]['high'], 0)} °C")
    said += [parts[key]["text"].lower() for key in ("quench", "pickle") if parts[key]]
    return "; ".join(said)


def _amounts(plan: Data) -> list[str]:
    found = []
    if plan["mass_g"] is not None:
        start = plan["start"]["length_mm"]
        length = f"; the start is {start:.1f} mm long" if start else ""
        found.append(f"mass {plan['mass_g']:.2f} g{length}")
    if plan["charge_g"] is not None:
        parts = ", ".join(f"{e} {g:.2f} g" for e, g in plan["charge_by_element_g"].items())
        found.append(f"melt {plan['charge_g']:.2f} g: {parts}")
    return [*found, ""] if found else []
