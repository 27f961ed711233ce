"""The pages on which a formula is worked out: the list of all, and for each the form it asks by."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any
from urllib.parse import urlencode

from temperbook.derive import tables
from temperbook.derive.handbook import Handbook
from temperbook.metal import register
from temperbook.metal.register.formula import Answer, Formula, Input
from temperbook.views import answers, formatting, formula_words, formulas, routes
from temperbook.views.formulas import FormulaShown
from temperbook.views.pages import Link, Page

# Units that may be written for an input, its own first.
UNITS = {
    "mm": ("mm", "in", "um", "m", "awg", "swg", "bwg"),
    "degC": ("degC", "degF", "K"),
    "g": ("g", "kg", "ozt", "dwt"),
    "MPa": ("MPa", "ksi", "psi", "kgf/mm2"),
    "min": ("min", "h", "s"),
}
# Gauges are written behind their numbers as every unit is; here are their names alone.
NAMES = {"awg": "AWG", "swg": "SWG", "bwg": "BWG", "ozt": "troy oz", "cd/m2": "cd/m²"}
DIGITS, MOST = 4, 15  # of a number; digits before its point that are still read
HINTS = {
    "section": "round 1.0, square 6 or flat 20x1.5, in mm",
    "composition": "Percent of the mass: Ag 92.5, Cu 7.5",
    "list": "With commas between them: 1.0, 0.9, 0.8",
}


@dataclass(frozen=True)
class FieldShown:
    """A field of a form. units: as written, where there is a choice of them, the input's own first;
    words: what may be chosen. Units and alloys to choose from are filled in by the script."""

    name: str
    kind: str
    label: str
    unit: str
    units: tuple[str, ...]
    words: list[str]
    hint: str
    default: str
    may: bool


@dataclass(frozen=True)
class GroupShown:
    """Fields of which some are filled: the ways to do it, each with the names that it takes."""

    ways: list[tuple[str, list[str]]]
    fields: list[FieldShown]
    kind: str = "group"


@dataclass(frozen=True)
class FormulaPage:
    """A formula's page. given, found: the example in words, empty where the records lack what it
    needs; filled: the query that puts it into the form."""

    says: FormulaShown
    answers: str
    subject: Link
    parts: list[FieldShown | GroupShown]
    given: list[tuple[str, str]]
    found: list[tuple[str, list[str]]]
    filled: str


def all_pages(handbook: Handbook) -> list[Page]:
    """A page for each formula."""
    return [
        Page(address(f.id), "formula", f.label, page(f, handbook), formula_words.answers(f.id))
        for f in register.FORMULAS.values()
    ]


def address(formula_id: str) -> str:
    """Where a formula's form stands."""
    return f"work-it-out/{formula_id}/"


def listed(handbook: Handbook) -> list[tuple[str, str, list[Link]]]:
    """Title, anchor and formulas of each subject."""
    return [
        (title, routes.slug(title), [_link(formula_id) for formula_id in ids])
        for title, ids in formula_words.subjects().items()
    ]


def _link(formula_id: str) -> Link:
    label = register.FORMULAS[formula_id].label
    return Link(label, address(formula_id), formula_words.answers(formula_id))


def page(formula: Formula, handbook: Handbook) -> FormulaPage:
    """What one formula's page says."""
    subject = formula_words.subject_of(formula.id)
    answer = formulas.example(formula, handbook)
    return FormulaPage(
        says=formulas.shown(formula, handbook),
        answers=formula_words.answers(formula.id),
        subject=Link(subject, f"work-it-out/#{routes.slug(subject)}"),
        parts=_parts(formula, handbook),
        given=_given(formula, handbook) if answer else [],
        found=_found(formula, answer, handbook) if answer else [],
        filled=f"?{urlencode(formulas.typed(formula))}",
    )


def _given(formula: Formula, handbook: Handbook) -> list[tuple[str, str]]:
    return [
        (formula.inputs[name].label, _said(formula.inputs[name], typed, handbook))
        for name, typed in formulas.typed(formula).items()
    ]


def _said(declared: Input, typed: str, handbook: Handbook) -> str:
    if declared.kind == "alloy" and typed in handbook.library.alloys:
        return handbook.library.alloys[typed].name
    if declared.kind == "flag":
        return {"true": "yes", "false": "no"}[typed]
    return formatting.with_unit(typed, unit(declared.unit) if declared.kind == "number" else "")


def _found(formula: Formula, answer: Answer, handbook: Handbook) -> list[tuple[str, list[str]]]:
    elements = element_names(handbook)
    found = []
    first = formula_words.FIRST.get(formula.id, ())
    for name in dict.fromkeys([*(n for n in first if n in answer.outputs), *answer.outputs]):
        value = answer.outputs[name]
        label = elements.get(name) or formula_words.output(formula.id, name)
        if isinstance(value, Mapping):
            found.append((label, [f"{who}: {what}" for who, what in value.items()]))
        else:
            written = answers.unit(formula, name, answer)
            found.append((label, [formatting.with_unit(figure(value), unit(written))]))
    return found


def figure(value: Any) -> str:
    """A value of an answer as pages print it: four digits, whole from ten thousand on."""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, list):
        return ", ".join(map(figure, value))
    if not isinstance(value, int | float):
        return str(value)
    if 10**DIGITS - 0.5 <= abs(value) < 10**MOST:
        return f"{value:,.0f}"
    return _power(f"{value:.{DIGITS}g}")


def _power(text: str) -> str:
    """`1.2×10^-9` for `1.2e-09`."""
    number, exponent, power = text.partition("e")
    return f"{number}×10^{int(power)}" if exponent else number


def _parts(formula: Formula, handbook: Handbook) -> list[FieldShown | GroupShown]:
    """Fields in the order of the inputs; a group stands where its first field would."""
    parts: list[FieldShown | GroupShown] = []
    done: set[str] = set()
    for name, declared in formula.inputs.items():
        if name in done:
            continue
        group = next((g for g in formula.groups if any(name in way for way in g)), None)
        if group is None:
            parts.append(field(formula.id, name, declared, handbook))
            continue
        names = [n for n in formula.inputs if any(n in way for way in group)]
        ways = [(_way(way, formula), list(way)) for way in group]
        parts.append(
            GroupShown(ways, [field(formula.id, n, formula.inputs[n], handbook) for n in names])
        )
        done |= set(names)
    return parts


def _way(names: tuple[str, ...], formula: Formula) -> str:
    labels = [formula.inputs[name].label for name in names]
    return formatting.listed([labels[0], *(label.lower() for label in labels[1:])])


def field(formula_id: str, name: str, declared: Input, handbook: Handbook) -> FieldShown:
    """An input as a field of a form."""
    return FieldShown(
        name=name,
        kind=declared.kind,
        label=declared.label,
        unit=unit(declared.unit) if declared.kind == "number" else "",
        units=UNITS.get(declared.unit, ()) if declared.kind == "number" else (),
        words=_words(declared, handbook),
        hint=formula_words.HINTS.get(f"{formula_id} {name}") or _hint(declared),
        default=_default(declared),
        may=declared.open,
    )


def _hint(declared: Input) -> str:
    hint = HINTS.get(declared.kind, "")
    if _default(declared):
        return f"{_default(declared)} if left empty"
    if declared.optional:
        return f"{hint}; may be left out" if hint else "May be left out"
    return hint


def _words(declared: Input, handbook: Handbook) -> list[str]:
    """What may be chosen: the words of a choice, or those that a table holds for a name."""
    table, _, key = declared.choices_of.partition("/")
    if not key:
        return list(declared.choices)
    rows = tables.made([table], handbook.library)[table]
    return list(dict.fromkeys(row[key] for row in rows))


def _default(declared: Input) -> str:
    """What a number is taken as where its field is left empty."""
    taken = declared.kind == "number" and declared.default is not None
    return f"{declared.default:g}" if taken else ""


def unit(written: str) -> str:
    """A unit as a page shows it."""
    return NAMES.get(written) or formatting.SHOWN.get(written, written)


def families(handbook: Handbook) -> list[tuple[str, list[str]]]:
    """Ids of the alloys of each family, families in the order of the vocabulary."""
    words = handbook.library.vocabulary
    found: dict[str, list[str]] = {}
    for alloy in handbook.library.alloys.values():
        found.setdefault(alloy.family, []).append(alloy.id)
    return [(words.label("family", f), found[f]) for f in words.words["family"] if f in found]


def data(formula: Formula) -> dict[str, Any]:
    """A formula's record for the browser: all that the form needs to ask and to answer."""
    return {
        "id": formula.id,
        "label": formula.label,
        "inputs": inputs_of(formula.inputs),
        "outputs": dict(formula.outputs),
        "labels": {name: formula_words.output(formula.id, name) for name in formula.outputs},
        "first": list(formula_words.FIRST.get(formula.id, ())),
        "groups": [[list(way) for way in group] for group in formula.groups],
        "series": formula.series,
        "note": formula.note,
        "notes": dict(formula.notes),
        "example": _plain(formula.example),
    }


def inputs_of(inputs: Mapping[str, Input]) -> list[dict[str, Any]]:
    """Inputs for the browser, in their order."""
    return [_input(name, declared) for name, declared in inputs.items()]


def _input(name: str, declared: Input) -> dict[str, Any]:
    return {
        "name": name,
        "kind": declared.kind,
        "label": declared.label,
        "unit": declared.unit,
        "choices": list(declared.choices),
        "default": declared.default,
        "optional": declared.optional,
    }


def _plain(example: Mapping[str, Any]) -> dict[str, Any]:
    return {k: dict(v) if isinstance(v, Mapping) else v for k, v in example.items()}


def shown_units() -> dict[str, str]:
    """Units that are shown otherwise than written."""
    return {**{u: s for u, s in formatting.SHOWN.items() if u != s}, **NAMES}


def element_names(handbook: Handbook) -> dict[str, str]:
    """What an element is called, by symbol: `Silver (Ag)`."""
    return {
        symbol: f"{element.name} ({symbol})"
        for symbol, element in handbook.library.elements.items()
    }
