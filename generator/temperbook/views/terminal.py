"""An alloy's limits as lines of text."""

from __future__ import annotations

from temperbook.derive.handbook import Handbook
from temperbook.records.names import Found
from temperbook.views.alloy import AlloyShown


def alloy(shown: AlloyShown) -> list[str]:
    """The first screen of an alloy's page."""
    parts = ", ".join(f"{symbol} {share}" for symbol, _, share in shown.composition)
    lines = [f"{shown.name} ({shown.id}): {parts}", shown.about, ""]
    for limit in shown.limits:
        said = "; ".join(limit.said)
        lines.append(f"{limit.label:<22} {limit.figure}" + (f"  ({said})" if said else ""))
        sources = ", ".join(link.text for link in limit.sources)
        if limit.how:
            lines.append(f"{'':<22} {limit.how}" + (f": {sources}" if sources else ""))
    if shown.missing:
        lines += ["", "No published figure found: " + ", ".join(shown.missing)]
    lines += [""] + [f"{c.signal}: {c.name}. {c.quick}" for c in shown.cautions if c.immediate]
    return [*lines, "Local codes, the supplier's safety data sheet and licensed practice decide."]


def not_one(wanted: str, found: Found, handbook: Handbook) -> list[str]:
    """What to say where a name leads to several alloys or to none."""
    alloys = handbook.library.alloys
    if found.ids:
        return [f"`{wanted}` may be:", *(f"  {i:<28} {alloys[i].name}" for i in found.ids)]
    if found.near:
        return [
            f"No alloy is called `{wanted}`. Near it:",
            *(f"  {i:<28} {alloys[i].name}" for i in found.near),
        ]
    return [f"No alloy is called `{wanted}`. `temperbook check` counts them; the index lists them."]
