"""What computations need to know of an alloy, taken from its record."""

from __future__ import annotations

from dataclasses import replace

from temperbook.derive import cautions, computing, limits
from temperbook.derive.handbook import Handbook
from temperbook.metal.alloying import NEVER_MELTED
from temperbook.metal.facts import AlloyFacts, Known, Stated
from temperbook.records.figures import Figure, Rule
from temperbook.records.load import Library
from temperbook.records.models import Alloy, Subject

# Kinds of records that the facts of an alloy are taken from.
KINDS = ("alloys", "elements", "subjects", "colours", "cautions", "charts")
QUANTITIES = (
    "solidus",
    "liquidus",
    "melting-point",
    "overheating",
    "no-dwell",
    "quench-from",
    "anneal",
    "anneal-time",
    "reduction-ceiling",
    "reduction-floor",
    "reduction-per-pass",
    "temper-reduction",
    "hardness",
    "hardness-brinell",
    "hardness-strip",
    "tensile",
    "grain-size",
)

# Those that hold for every alloy of a system or family which states none of its own.
APPLIED = ("temper-reduction",)


def of_alloy(alloy: Alloy, handbook: Handbook, words: bool = True) -> AlloyFacts:
    """The facts of one alloy. The handbook holds at least the records of `KINDS`.

    words: whether glow and cautions are said as well; without them alloys and elements suffice.
    """
    library = handbook.library
    density, how = _density(alloy, library)
    return AlloyFacts(
        id=alloy.id,
        name=alloy.name,
        composition=alloy.composition,
        density=density,
        density_how=how,
        melt=_melt(alloy),
        cold=alloy.worked == "cold",
        figures=_figures(alloy, library),
        heating=_stated(alloy.heating, "heating", library),
        quench=_stated(alloy.quench, "cooling", library),
        pickle=_stated(alloy.pickle, "pickle", library),
        glow=_glow(alloy, handbook) if words else "",
        cautions=_cautions(alloy, library) if words else (),
    )


def _figures(alloy: Alloy, library: Library) -> dict[str, tuple[Known, ...]]:
    """The alloy's own figures; for some quantities, where it has none, those of its subjects."""
    found = {q: known(alloy.figures[q]) for q in QUANTITIES if q in alloy.figures}
    for quantity in APPLIED:
        for subject_id in alloy.subjects:
            subject = library.subjects.get(subject_id)
            if quantity not in found and subject and quantity in subject.figures:
                figures = of_subject(subject, quantity)
                found[quantity] = tuple(replace(one, how="applied") for one in figures)
    return found


def _cautions(alloy: Alloy, library: Library) -> tuple[tuple[str, str, str], ...]:
    return tuple((c.id, c.signal, c.name) for c in cautions.of_alloy(alloy, library))


def of_subject(subject: Subject, quantity: str) -> tuple[Known, ...]:
    """A subject's figures of a quantity."""
    return known(subject.figures.get(quantity, []))


def known(figures: list[Figure]) -> tuple[Known, ...]:
    """Figures as plain numbers; one that is still to be computed is left out."""
    return tuple(_known(figure) for figure in figures if figure.ends != (None, None))


def _known(figure: Figure) -> Known:
    low, high = figure.ends
    return Known(
        low=low,
        high=high,
        unit=figure.unit,
        how=figure.how,
        sources=sources(figure.from_),
        name=figure.name or "",
        of=figure.of or "",
        process=figure.process or "",
        form=figure.form or "",
        state=figure.state or "",
        heat=figure.heat or "",
        stage=figure.stage or "",
        reduction=figure.reduction,
    )


def sources(rows: list[str]) -> tuple[str, ...]:
    """Ids of the works that evidence rows belong to, each once: the id of a row begins with it."""
    return tuple(dict.fromkeys(row.rsplit(".", 1)[0] for row in rows))


def _stated(rule: Rule | None, quantity: str, library: Library) -> Stated | None:
    if rule is None:
        return None
    text = library.vocabulary.quantities[quantity].words.get(rule.rule, rule.rule)
    return Stated(rule.rule, text, rule.how, sources(rule.from_))


def _density(alloy: Alloy, library: Library) -> tuple[float | None, str]:
    adopted = computing.adopted_density(alloy)
    if adopted:
        return adopted
    if alloy.composition.keys() <= computing.element_densities(library).keys():
        return computing.density(alloy, library), "computed"
    return None, ""


def _melt(alloy: Alloy) -> str:
    poison = any(alloy.composition.get(element) for element in NEVER_MELTED)
    return "never" if poison and alloy.melt == "bench" else alloy.melt


def _glow(alloy: Alloy, handbook: Handbook) -> str:
    chart = next(iter(handbook.library.charts.values()))
    group = limits.glow_group(alloy, chart, handbook)
    return group.title if group else ""
