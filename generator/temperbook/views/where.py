"""Where the metal stands since its last anneal, as plain data and as lines."""

from __future__ import annotations

from typing import Any

from temperbook.metal import runs
from temperbook.metal.planning import texts
from temperbook.metal.planning.where import Where
from temperbook.views import filling, plan, plan_lines

Data = dict[str, Any]


def data(where: Where) -> Data:
    """Work used and left, on each basis that the sections have."""
    used = plan.reductions(where.start, where.now)
    return {
        "alloy": where.facts.id,
        "name": where.facts.name,
        "from": plan.section(where.start),
        "now": plan.section(where.now),
        "process": where.process,
        **{f"used_{key.removeprefix('reduction_')}": value for key, value in used.items()},
        "true_strain": where.used,
        **plan.bound("ceiling", where.ceiling),
        **plan.bound("floor", where.floor),
        "left_strain": where.left,
        "left_area_pct": 100 * runs.reduction_of(where.left),
        "until": plan.section(where.until),
        "not_before": plan.section(where.earliest) if where.earliest else None,
        "next": where.next,
        "anneal": plan.anneal(where.facts),
        "hardness": plan.hardness(where.hardness),
        "notes": [],
        "warnings": filling.said(where.warnings, texts.WARNINGS),
        "cautions": plan.cautions(where.facts),
    }


def lines(data: Data) -> list[str]:
    """The same for a terminal."""
    used = {f"reduction_{k.removeprefix('used_')}": v for k, v in data.items() if k[:5] == "used_"}
    used["now"] = data["now"]
    found = [
        f"{data['name']}: {data['from']['text']} -> {data['now']['text']}",
        f"used   {plan_lines.reductions(used)} (true strain {data['true_strain']:.2f})",
        f"limit  {plan_lines.ceiling(data)}",
    ]
    if data["next"] == "anneal":
        found.append("next   anneal now")
    else:
        until = data["until"]["text"]
        found.append(f"left   {data['left_area_pct']:.0f} % of what it is now: down to {until}")
        if data["not_before"]:
            found.append(f"next   work on; not worth an anneal before {data['not_before']['text']}")
        else:
            found.append("next   work on, or anneal")
    found.append(f"anneal {plan_lines.anneal(data['anneal'])}")
    return [*found, *(f"look out: {one['text']}" for one in data["warnings"])]
