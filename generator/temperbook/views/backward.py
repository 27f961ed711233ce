"""From the finished piece to ingot, mould and charge, as plain data and as lines."""

from __future__ import annotations

from typing import Any

from temperbook.metal.planning.backwards import Backwards
from temperbook.views import plan, plan_lines

Data = dict[str, Any]


def data(found: Backwards, gauge_tables: plan.Gauges) -> Data:
    """Options, mould, charge, and the plan from the ingot to the piece."""
    made = plan.data(found.plan, gauge_tables)
    return {
        "alloy": made["alloy"],
        "name": made["name"],
        "end": made["end"],
        "mass_g": made["mass_g"],
        "options": [
            {
                "anneals": option.anneals,
                "start": plan.section(option.start),
                "true_strain": option.strain,
            }
            for option in found.options
        ],
        "mould": plan.section(found.mould),
        "pour_length_mm": found.pour_length,
        "ingot_g": found.poured,
        "charge_g": made["charge_g"],
        "charge_by_element_g": made["charge_by_element_g"],
        "plan": made,
    }


def lines(data: Data) -> list[str]:
    """The same for a terminal."""
    found = [f"{data['name']}: back from {data['end']['text']}, {data['mass_g']:.2f} g", ""]
    found += [
        f"with {option['anneals']} anneals from at most {option['start']['text']}"
        for option in data["options"]
    ]
    parts = ", ".join(f"{e} {g:.2f} g" for e, g in data["charge_by_element_g"].items())
    found += [
        "",
        f"mould  {data['mould']['text']}, poured {data['pour_length_mm']:.1f} mm long",
        f"ingot  {data['ingot_g']:.2f} g; melt {data['charge_g']:.2f} g: {parts}",
        "",
    ]
    return found + plan_lines.lines(data["plan"])
