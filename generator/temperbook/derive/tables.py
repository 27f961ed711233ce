"""The data tables that formulas read: plain numbers and texts, made from the records.

The same tables go to the browser as one file, so that both compute with the same numbers.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import asdict
from typing import Any

from temperbook.derive import colour_names, computing, facts, glow
from temperbook.derive.handbook import Handbook
from temperbook.derive.limits import highest, lowest
from temperbook.metal import mixture
from temperbook.records.figures import Figure
from temperbook.records.load import Library
from temperbook.records.models import Alloy

GAUGES, RINGS, SETTINGS = "gauge/", "ring-size/", "bench/settings"
MECHANISMS = ("recrystallisation", "grain-growth")
# Names of the specific heats of elements: which one a table calls cold, and which hot.
HEATS = {"near-room": "specific-heat", "1200-k": "specific-heat-hot"}
LETTERED = ("uk",)  # ring sizes that are letters
ALLOY_KINDS = ("alloys", "elements", "subjects")
BOTH = 5.0  # percent of each element from which a system's ordering holds for an alloy of it


def made(names: Iterable[str], library: Library, alloys: Iterable[str] = ()) -> dict[str, Any]:
    """The tables of these names; that of the alloys holds those that are named alone.

    Errors: KeyError for an unknown table.
    """
    return {
        name: of_alloys(alloys, library) if name == "alloys" else _TABLES[name][1](library)
        for name in names
    }


def all_of(library: Library) -> dict[str, Any]:
    """Every table, with every alloy and all its words."""
    tables = made(_TABLES, library)
    return {**tables, "alloys": of_alloys(library.alloys, library, words=True)}


def kinds(names: Iterable[str], with_alloy: bool) -> list[str]:
    """The kinds of records that these tables are made from."""
    found = [kind for name in names if name != "alloys" for kind in _TABLES[name][0]]
    return list(dict.fromkeys([*found, *(ALLOY_KINDS if with_alloy else ())]))


def of_alloys(alloys: Iterable[str], library: Library, words: bool = False) -> dict[str, Any]:
    """The facts of alloys by id as plain data, with the heats at which each orders.

    words: whether glow and cautions are said, which no formula needs and a plan does.
    """
    handbook = Handbook(library)
    return {i: _alloy(library.alloys[i], handbook, words) for i in alloys}


def _alloy(alloy: Alloy, handbook: Handbook, words: bool) -> dict[str, Any]:
    found: dict[str, Any] = _plain(asdict(facts.of_alloy(alloy, handbook, words)))
    return {**found, "boundaries": list(_boundaries(alloy, handbook.library))}


def _plain(value: Any) -> Any:
    """The same value as JSON keeps it: lists for tuples."""
    if isinstance(value, Mapping):
        return {key: _plain(part) for key, part in value.items()}
    return [_plain(part) for part in value] if isinstance(value, list | tuple) else value


def _boundaries(alloy: Alloy, library: Library) -> Iterator[dict[str, Any]]:
    """Where the alloy orders: by its own record, and by the systems that it has enough of."""
    for subject_id in (alloy.id, *alloy.subjects):
        record = alloy if subject_id == alloy.id else library.subjects.get(subject_id)
        symbols = subject_id.split("/")[-1].title().split("-")
        enough = all(alloy.composition.get(symbol, 0) >= BOTH for symbol in symbols)
        if record is None or not (enough or record is alloy):
            continue
        for figure in _whole(record.figures.get("ordering", [])):
            name = figure.name or ""
            yield {"name": name, "low": lowest(figure), "high": highest(figure)}


def _whole(figures: Iterable[Figure]) -> list[Figure]:
    """Figures that have a number: what is still to be computed, or has a slip, is left out."""
    return [figure for figure in figures if figure.ends != (None, None)]


def _masses(library: Library) -> dict[str, float]:
    return computing.of_elements("atomic-mass", library)


def _thermal(library: Library) -> dict[str, dict[str, float]]:
    found: dict[str, dict[str, float]] = {}
    for symbol, element in library.elements.items():
        heats = {
            HEATS[figure.name]: figure.value
            for figure in element.figures.get("specific-heat", [])
            if figure.name in HEATS and figure.value is not None
        }
        for quantity in ("latent-heat", "melting-point"):
            for figure in element.figures.get(quantity, [])[:1]:
                if figure.value is not None:
                    heats[quantity] = figure.value
        found[symbol] = heats
    return found


def _gauges(library: Library) -> dict[str, dict[str, float]]:
    return {
        subject_id.removeprefix(GAUGES): _named(subject.figures.get("gauge-size", []))
        for subject_id, subject in library.subjects.items()
        if subject_id.startswith(GAUGES)
    }


def _named(figures: Iterable[Figure]) -> dict[str, float]:
    return {f.name: f.value for f in figures if f.name and f.value is not None}


def _ring_sizes(library: Library) -> dict[str, dict[str, Any]]:
    found = {}
    for subject_id, subject in library.subjects.items():
        if not subject_id.startswith(RINGS):
            continue
        first = _named(subject.figures.get("ring-first", []))
        step = _named(subject.figures.get("ring-step", []))
        rule = next(
            ({"measure": m, "first": first[m], "step": step[m]} for m in first if m in step), None
        )
        sizes = _named(subject.figures.get("ring-diameter", []))
        system = subject_id.removeprefix(RINGS)
        found[system] = {"sizes": sizes, "rule": rule, "letters": system in LETTERED}
    return found


def _observer(library: Library) -> list[list[float]]:
    return [list(row) for row in glow.scale(library.project).observer]


def _colour_names(library: Library) -> dict[str, list[list[Any]]]:
    return {
        observer: [[name.text, name.low, name.high] for name in names]
        for observer, names in colour_names.observers(library)
    }


def _finenesses(library: Library) -> list[dict[str, Any]]:
    return [
        {
            "element": figure.element,
            "fineness": lowest(figure),
            "where": subject.name.split(": ")[-1].removeprefix("Finenesses of "),
            "name": figure.name or "",
        }
        for subject in library.subjects.values()
        for figure in _whole(subject.figures.get("legal-fineness", []))
    ]


def _activation_energies(library: Library) -> list[dict[str, Any]]:
    found = []
    for subject in library.subjects.values():
        for figure in subject.figures.get("activation-energy", []):
            for mechanism in MECHANISMS:
                metal = (figure.name or "").removesuffix(f"-{mechanism}")
                if figure.value is not None and metal != (figure.name or ""):
                    found.append(
                        {
                            "metal": metal,
                            "mechanism": mechanism,
                            "energy": figure.value,
                            "said": library.vocabulary.label("how", figure.how),
                        }
                    )
    return found


def _mixing_errors(library: Library) -> list[dict[str, Any]]:
    elements = computing.element_densities(library)
    found = []
    for alloy in library.alloys.values():
        printed = [f for f in _whole(alloy.figures.get("density", [])) if f.how != "computed"]
        if not printed:
            continue
        published = (lowest(printed[0]) + highest(printed[0])) / 2
        try:
            mixed = mixture.density_by_mixing(alloy.composition, elements)
        except ValueError:  # an element without density; a wrong sum is told by its own rule
            continue
        error = 100 * (mixed / published - 1)
        found.append({"alloy": alloy.id, "published": published, "mixed": mixed, "error": error})
    return found


def _settings(library: Library) -> dict[str, list[dict[str, Any]]]:
    subject = library.subjects.get(SETTINGS)
    label = library.vocabulary.label
    return {
        quantity: [{**_plain(asdict(k)), "said": label("how", k.how)} for k in facts.known(figures)]
        for quantity, figures in (subject.figures if subject else {}).items()
    }


# Table -> the kinds of records that it is made from, and what makes it.
_TABLES: Mapping[str, tuple[tuple[str, ...], Callable[[Library], Any]]] = {
    "densities": (("elements",), computing.element_densities),
    "atomic-masses": (("elements",), _masses),
    "thermal": (("elements",), _thermal),
    "gauges": (("subjects",), _gauges),
    "ring-sizes": (("subjects",), _ring_sizes),
    "observer": ((), _observer),
    "colour-names": (("colours",), _colour_names),
    "finenesses": (("subjects",), _finenesses),
    "activation-energies": (("subjects",), _activation_energies),
    "mixing-errors": (("alloys", "elements"), _mixing_errors),
    "settings": (("subjects",), _settings),
}
