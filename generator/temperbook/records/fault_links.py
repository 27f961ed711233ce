"""What a fault's record names: words, alloys, elements, pictures, figures. All must exist."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import TYPE_CHECKING

from temperbook.problems import Problem, nearest
from temperbook.records import link_prose
from temperbook.records.causes import Which
from temperbook.records.yaml_reader import Document, Location, shown_location

if TYPE_CHECKING:
    from temperbook.records.load import Library
    from temperbook.records.models import Fault


def problems(library: Library) -> Iterator[Problem]:
    """Every name in a fault's record that leads nowhere."""
    figures = library.figures() if library.faults else {}
    for fault_id, fault in library.faults.items():
        document = library.document(fault_id, "faults")
        for at, named, known in _names(fault, library):
            if named not in known:
                yield document.problem(
                    at,
                    f"{shown_location(at)} names nothing that the handbook knows",
                    found=named,
                    needed=nearest(named, known),
                    mend="correct the name, or enter what it names",
                )
        for position, call in enumerate(fault.numbers):
            yield from _number(document, ("numbers", position), call, figures, library)


def _number(
    document: Document, at: Location, call: str, figures: Mapping[str, object], library: Library
) -> Iterator[Problem]:
    fault = link_prose.fault(call, figures, library)
    if fault:
        yield document.problem(
            at,
            f"{shown_location(at)} {fault.text}",
            found=call,
            needed=fault.needed,
            mend=fault.mend,
        )


def _names(fault: Fault, library: Library) -> Iterator[tuple[Location, str, set[str]]]:
    """Each name with its place and what is known of its kind."""
    words = library.vocabulary.words
    for key, vocabulary in (("when", "work"), ("looks", "looks")):
        for position, word in enumerate(getattr(fault, key)):
            yield (key, position), word, set(words.get(vocabulary, {}))
    yield ("picture",), fault.picture, set(words.get("picture", {}))
    yield from _which(("prone",), fault.prone, library)
    for position, cause in enumerate(fault.causes):
        for key in ("more", "less", "only"):
            yield from _which(("causes", position, key), getattr(cause, key), library)


def _which(
    at: Location, which: Which | None, library: Library
) -> Iterator[tuple[Location, str, set[str]]]:
    if which is None:
        return
    known = {
        kind: {i for k, i in library.documents if k == kind} for kind in ("alloys", "elements")
    }
    words = library.vocabulary
    structures = words.quantities["structure"].words if "structure" in words.quantities else {}
    for key, names, allowed in (
        ("alloys", which.alloys, known["alloys"]),
        ("families", which.families, set(words.words.get("family", {}))),
        ("structure", which.structure, set(structures)),
    ):
        for position, named in enumerate(names):
            yield (*at, key, position), named, allowed
    for symbol in which.elements:
        yield (*at, "elements", symbol), symbol, known["elements"]
