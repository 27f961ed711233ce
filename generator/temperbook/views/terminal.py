"""An alloy's limits as lines of text."""

from __future__ import annotations

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
