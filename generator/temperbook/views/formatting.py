"""Turns figures into words. The one place where a number leaves its figure and is rounded."""

from __future__ import annotations

from dataclasses import dataclass

from temperbook.records import printed
from temperbook.records.evidence import Evidence
from temperbook.records.figures import BASIS_KEYS, Figure
from temperbook.records.load import Library
from temperbook.records.vocabulary import Quantity, Vocabulary

# How a unit is shown.
SHOWN = {
    "degC": "°C",
    "degF": "°F",
    "K": "K",
    "percent": "%",
    "per-mille": "‰",
    "ppm": "ppm",
    "Zollpfund/mm2": "Zollpfund/mm²",
    "g/cm3": "g/cm³",
    "kg/m3": "kg/m³",
    "lb/in3": "lb/in³",
    "kgf/mm2": "kgf/mm²",
    "N/mm2": "N/mm²",
    "mg/m3": "mg/m³",
    "ug/m3": "microgram/m³",
    "count": "",
    "fraction": "",
    "um": "micrometre",
    "volumes": "volumes",
    "times": "times",
    "ct": "ct",
    "in": "in",
    "": "",
}
SPACE = "\u00a0"  # keeps a number and its unit on one line

# The mark that each way of knowing carries: its shape tells, in grey too.
MARKS = {
    "quoted": "published",
    "converted": "judged",
    "chosen": "judged",
    "applied": "judged",
    "computed": "computed",
    "practice": "practice",
    "memory": "memory",
}
LEGEND = (
    ("published", "published"),
    ("judged", "published, then converted, chosen or applied"),
    ("computed", "computed"),
    ("practice", "common practice, no source"),
    ("memory", "from memory, unverified"),
)


@dataclass(frozen=True)
class Shown:
    """A figure as a reader meets it."""

    text: str
    mark: str
    how: str
    basis: str
    why: str
    sources: tuple[str, ...]


def number(value: float, decimals: int) -> str:
    """A number with so many decimals, and no more than it has: `779.1`, `50`, `0.004`."""
    text = f"{value:.{decimals}f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


def with_unit(text: str, unit: str) -> str:
    """`650 °C`, `50 %`, `2` for a count."""
    shown = SHOWN.get(unit, unit)
    return f"{text}{SPACE}{shown}" if shown else text


def value(figure: Figure, quantity: Quantity) -> str:
    """The figure's number or range with its unit, rounded as its quantity says."""
    return with_unit(bare(figure, quantity), figure.unit)


def bare(figure: Figure, quantity: Quantity) -> str:
    """The same without the unit."""
    return ends(figure.ends, quantity.decimals)


def ends(pair: tuple[float | None, float | None], decimals: int) -> str:
    """`600–650`, `at most 70`, `at least 50`, `650`."""
    low, high = (None if end is None else number(end, decimals) for end in pair)
    if low is None:
        return f"at most {high}"
    if high is None:
        return f"at least {low}"
    return low if low == high else f"{low}–{high}"


def duration(figure: Figure) -> str:
    """A time [min] in words that a bench uses: `30 s`, `1–3 min`, `2 h`."""
    given = [end for end in figure.ends if end is not None]
    if all(end < 2 and end != 1 for end in given):
        factor, unit = 60.0, "s"
    elif all(end >= 120 for end in given):
        factor, unit = 1 / 60, "h"
    else:
        factor, unit = 1.0, "min"
    low, high = (None if end is None else end * factor for end in figure.ends)
    return with_unit(ends((low, high), 1), unit)


def basis(of: Figure | Evidence, words: Vocabulary, only: tuple[str, ...] = BASIS_KEYS) -> str:
    """The basis of a figure or row in words: `of the thickness, rolling, sheet, after an
    anneal`."""
    said = []
    for key in BASIS_KEYS:
        word = getattr(of, key)
        if key not in only or word in (None, "", "any"):
            continue
        if key == "reduction":
            said.append(f"after {float(word):g}{SPACE}% cold work")
        else:
            said.append(words.label(key, word))
    return ", ".join(said)


def shown(figure: Figure, quantity_id: str, library: Library) -> Shown:
    """A figure in words, with its mark and sources."""
    quantity = library.vocabulary.quantities[quantity_id]
    text = duration(figure) if quantity.unit == "min" else value(figure, quantity)
    return Shown(
        text=text,
        mark=MARKS[figure.how],
        how=library.vocabulary.label("how", figure.how),
        basis=basis(figure, library.vocabulary),
        why=figure.why or "",
        sources=sources_of(figure.from_, library),
    )


def sources_of(rows: list[str], library: Library) -> tuple[str, ...]:
    """Ids of the sources that rows come from, each once, in order."""
    return tuple(dict.fromkeys(library.evidence[row].source for row in rows))


def printed_text(row: Evidence) -> str:
    """A row as its source prints it: `1150–1350 °F`; the words where it prints no number."""
    parsed = printed.parse(row.printed_value)
    if parsed is None:
        return row.printed_value
    text = (
        row.printed_value.replace("<=", "at most ")
        .replace(">=", "at least ")
        .replace("~", "about ")
    )
    if parsed.low is not None and parsed.high is not None and parsed.low != parsed.high:
        text = text.replace("-", "–")
    return with_unit(text, row.printed_unit)


def listed(items: list[str], last: str = "and") -> str:
    """`a, b and c`."""
    return (
        items[0]
        if len(items) == 1
        else f"{', '.join(items[:-1])} {last} {items[-1]}"
        if items
        else ""
    )
