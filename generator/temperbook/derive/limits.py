"""The limits that a bench asks for first: which of an alloy's figures stand for it, and what
follows."""

from __future__ import annotations

from dataclasses import dataclass

from temperbook.derive.handbook import Handbook
from temperbook.metal import reduction
from temperbook.records.figures import Figure
from temperbook.records.models import Alloy, Chart, ChartGroup

IN_AIR = "in air"
READ = ("quoted", "converted", "chosen", "applied")


@dataclass(frozen=True)
class OnWire:
    """A reduction limit on both bases of wire [percent]; `safe` says that the basis was not
    stated."""

    area: float
    diameter: float
    safe: bool


def first(alloy: Alloy, quantity: str, **basis: str) -> Figure | None:
    """The first figure of a quantity with these basis words; published ones before practice."""
    fitting = [
        figure
        for figure in alloy.figures.get(quantity, [])
        if all(getattr(figure, key) in (word, "any") for key, word in basis.items())
    ]
    return next((f for f in fitting if f.how in READ), fitting[0] if fitting else None)


def anneal(alloy: Alloy) -> Figure | None:
    """The anneal that is shown large: the record's first figure."""
    return next(iter(alloy.figures.get("anneal", [])), None)


def hold(alloy: Alloy, heat: str) -> Figure | None:
    """How long that anneal is held, where a figure for the same kind of heating is known."""
    return first(alloy, "anneal-time", heat=heat) if heat else None


def ceiling(alloy: Alloy, stage: str = "annealed") -> Figure | None:
    """How far between anneals at a stage."""
    return first(alloy, "reduction-ceiling", stage=stage)


def stop(alloy: Alloy) -> tuple[str, Figure] | None:
    """Where the metal is spoiled or begins to melt: the lowest of its figures, with its
    quantity."""
    found = [
        (quantity, figure)
        for quantity in ("overheating", "solidus", "melting-point")
        for figure in alloy.figures.get(quantity, [])
        # A named one holds for that case alone; but every bench works in air.
        if quantity != "overheating" or figure.name in (None, IN_AIR)
    ]
    with_low = [(lowest(f), q, f) for q, f in found]
    if not with_low:
        return None
    _, quantity, figure = min(with_low, key=lambda item: item[0])
    return quantity, figure


def hard_stop(alloy: Alloy, handbook: Handbook) -> float | None:
    """Where an eye must stop [degC]: one eye's error below the lowest heat at which anything
    melts."""
    found = stop(alloy)
    return lowest(found[1]) - eye_error(handbook) if found else None


def melts_unseen(alloy: Alloy, handbook: Handbook) -> bool:
    """Whether melting begins before the metal glows so plainly that an eye could stop in time."""
    stops = hard_stop(alloy, handbook)
    chart = next(iter(handbook.library.charts.values()))
    return stops is not None and stops < highest(
        handbook.figure(chart.landmarks["dull-red"]).figure
    )


def lowest(figure: Figure) -> float:
    """Its lower end, or the only one that it has, in its unit."""
    low, high = figure.ends
    value = low if low is not None else high
    assert value is not None
    return value


def highest(figure: Figure) -> float:
    """Its upper end, or the only one that it has, in its unit."""
    low, high = figure.ends
    value = high if high is not None else low
    assert value is not None
    return value


def middle(figure: Figure) -> float:
    """The middle of its range, or the only end that it has, in its unit."""
    return (lowest(figure) + highest(figure)) / 2


def on_wire(figure: Figure) -> OnWire | None:
    """A ceiling on both bases of wire; None for a limit on thickness, which no wire has.

    Where the basis is not stated the reading that allows least work is taken: the percentage is
    the area's.
    """
    share = lowest(figure) / 100
    if not 0 < share < 1 or figure.of == "thickness":
        return None
    of: reduction.Basis = "diameter" if figure.of == "diameter" else "area"
    each = reduction.on_each_basis(share, of, "round")
    return OnWire(100 * each["area"], 100 * each["diameter"], figure.of == "not-stated")


def glow_group(alloy: Alloy, chart: Chart, handbook: Handbook) -> ChartGroup | None:
    """The chart's group that the alloy's anneal belongs to, by the chart's landmarks of glow."""
    figure = anneal(alloy)
    if figure is None:
        return None
    first_glow = lowest(handbook.figure(chart.landmarks["first-glow"]).figure)
    dull_red = highest(handbook.figure(chart.landmarks["dull-red"]).figure)
    if highest(figure) < first_glow:
        when = "below-glow"
    elif lowest(figure) <= dull_red:
        when = "meets-first-red"
    else:
        when = "hotter"
    return next(group for group in chart.groups if group.when == when)


def eye_error(handbook: Handbook) -> float:
    """How far two observers differ [K]: the margin that is kept below melting."""
    chart = next(iter(handbook.library.charts.values()))
    return highest(handbook.figure(chart.landmarks["eye-error"]).figure)
