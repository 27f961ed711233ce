"""The anneal chart: which rows it has, in which groups, and what each says. No coordinates."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from temperbook.derive import colour_names, limits
from temperbook.derive.handbook import Handbook
from temperbook.records.figures import Figure
from temperbook.records.models import Alloy, Chart
from temperbook.views import formatting, pages
from temperbook.views.formatting import MARKS, number

# What the sign of each way to cool means, in words short enough for a legend.
COOLING = {
    "water": "water at once",
    "water-after-glow": "glow gone, then water",
    "air": "air",
    "slow": "slowly",
    "furnace": "in the kiln",
    "alcohol": "alcohol",
    "either": "water or air",
}


@dataclass(frozen=True)
class ChartRow:
    """An alloy on the chart; temperatures [degC], None where nothing is published."""

    alloy: str
    name: str
    low: float | None
    high: float | None
    figure: str
    mark: str
    hold: str
    hold_mark: str
    quench: str
    quench_mark: str
    stop: float | None
    stop_mark: str
    ordering: tuple[tuple[float, float], ...]
    by_instrument: bool


@dataclass(frozen=True)
class ChartGroupShown:
    """Rows that share a rule."""

    title: str
    rows: list[ChartRow]


@dataclass(frozen=True)
class ObserverLane:
    """An observer's names with the temperatures [degC] that they cover."""

    name: str
    names: list[tuple[str, float, float]]


@dataclass(frozen=True)
class ChartCaution:
    """A caution on the chart. name: empty where it holds for all work. alloys: those that bring it,
    by id; none where it stands on every sheet."""

    signal: str
    name: str
    quick: str
    alloys: frozenset[str]


@dataclass(frozen=True)
class AnnealChart:
    """What the chart says, whatever the paper."""

    id: str
    title: str
    lead: str
    groups: list[ChartGroupShown]
    observers: list[ObserverLane]
    margin: float
    cautions: list[ChartCaution]
    legend: list[tuple[str, str]]
    cooling: list[tuple[str, str]]
    notes: list[str]
    edition: str
    address: str


def shown(chart: Chart, alloys: Sequence[Alloy], handbook: Handbook) -> AnnealChart:
    """The chart for some alloys: the chart's groups in order, rows by temperature in each."""
    edition = handbook.library.edition
    margin = limits.highest(handbook.figure(chart.landmarks["eye-error"]).figure)
    return AnnealChart(
        id=chart.id,
        title=chart.title,
        lead=chart.lead,
        groups=_groups(chart, alloys, margin, handbook),
        observers=[
            ObserverLane(
                name.split(",")[0].removeprefix("Great "), [(n.text, n.low, n.high) for n in names]
            )
            for name, names in colour_names.observers(handbook.library)
        ],
        margin=margin,
        cautions=_cautions(chart, alloys, handbook),
        legend=pages.legend(),
        cooling=_cooling(alloys),
        notes=_notes(margin),
        edition=f"{edition.name}, {edition.date}",
        address=f"{edition.address}wall-charts/{chart.id}/",
    )


def _cautions(chart: Chart, alloys: Sequence[Alloy], handbook: Handbook) -> list[ChartCaution]:
    found = []
    for caution in handbook.cautions_on(chart, alloys):
        head = pages.caution(caution)
        named = caution.id in chart.cautions
        bringing = [] if named else [a.id for a in alloys if caution in handbook.cautions_of[a.id]]
        name = "" if named else head.name
        found.append(ChartCaution(head.signal, name, head.quick, frozenset(bringing)))
    return found


def _cooling(alloys: Sequence[Alloy]) -> list[tuple[str, str]]:
    used = {alloy.quench.rule for alloy in alloys if alloy.quench}
    return [(kind, words) for kind, words in COOLING.items() if kind in used]


def _notes(margin: float) -> list[str]:
    return [
        "Colours: oxidised metal, dim shop; print is approximate.",
        f"Hatching begins {number(margin, 0)} K below melting: two eyes differ by as much.",
        "Bright metal looks cooler.",
        "Local codes, safety data sheets and your trainer decide.",
    ]


def _groups(
    chart: Chart, alloys: Sequence[Alloy], margin: float, handbook: Handbook
) -> list[ChartGroupShown]:
    found: dict[str, list[ChartRow]] = {}
    for alloy in alloys:
        group = limits.glow_group(alloy, chart, handbook)
        found.setdefault(group.title if group else "", []).append(_row(alloy, margin))
    groups = [
        ChartGroupShown(g.title, sorted(found[g.title], key=_by_heat))
        for g in chart.groups
        if g.title in found
    ]
    if "" in found:
        groups.append(ChartGroupShown("No published anneal: see its page", found[""]))
    return groups


def _by_heat(row: ChartRow) -> tuple[float, float, str]:
    return row.low or 0, row.high or 0, row.name


def _row(alloy: Alloy, margin: float) -> ChartRow:
    anneal = limits.anneal(alloy)
    hold = limits.hold(alloy, anneal.heat or "any") if anneal else None
    stopped = limits.stop(alloy)
    stop = limits.lowest(stopped[1]) if stopped else None
    high = limits.highest(anneal) if anneal else None
    return ChartRow(
        alloy=alloy.id,
        name=alloy.short,
        low=limits.lowest(anneal) if anneal else None,
        high=high,
        figure=_range(anneal) if anneal else "—",
        mark=MARKS[anneal.how] if anneal else "",
        hold=formatting.ends(hold.ends, 1) if hold else "",
        hold_mark=MARKS[hold.how] if hold else "",
        quench=alloy.quench.rule if alloy.quench else "",
        quench_mark=MARKS[alloy.quench.how] if alloy.quench else "",
        stop=stop,
        stop_mark=MARKS[stopped[1].how] if stopped else "",
        ordering=tuple(_band(f) for f in alloy.figures.get("no-dwell", [])),
        by_instrument=stop is not None and high is not None and high > stop - 2 * margin,
    )


def _band(figure: Figure) -> tuple[float, float]:
    """A band in which not to linger [degC]; an open end reaches to the end of any scale."""
    low, high = figure.ends
    return (0.0 if low is None else low), (2000.0 if high is None else high)


def _range(figure: Figure) -> str:
    return formatting.ends(figure.ends, 0).replace("at most ", "≤").replace("at least ", "≥")
