"""An alloy's limits, or a solder's heats, as lines of text."""

from __future__ import annotations

from temperbook.views.alloy import AlloyShown
from temperbook.views.solder import SolderShown

DECIDES = "Local codes, the supplier's safety data sheet and licensed practice decide."


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
    return [*lines, DECIDES]


def solder(shown: SolderShown) -> list[str]:
    """Where a solder flows, and what it joins."""
    parts = ", ".join(f"{symbol} {share}" for symbol, _, share in shown.composition)
    lines = [f"{shown.name} ({shown.id}): {parts}", shown.about, ""]
    if shown.never:
        lines.append("Neither melt nor use it.")
    for group in shown.groups:
        lines += [f"{row.label:<22} {row.text}  ({row.how})" for row in group.rows]
    for joint in shown.joints:
        close = "; closer than an eye can tell" if joint.close else ""
        margin = f", {joint.text} below its first melting{close}" if joint.text else ""
        lines.append(f"{'joins':<22} {joint.alloy.text}{margin}")
    lines += [""] + [f"{c.signal}: {c.name}. {c.quick}" for c in shown.cautions if c.immediate]
    return [*lines, DECIDES]
