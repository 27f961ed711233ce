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
    if not library.faults:
        return
    figures, known = library.figures(), _known(library)
    for fault_id, fault in library.faults.items():
        document = library.document(fault_id, "faults")
        for at, named, allowed in _names(fault, known):
            if named not in allowed:
                yield document.problem(
                    at,
                    f"{shown_location(at)} names nothing that the handbook knows",
                    found=named,
                    needed=nearest(named, allowed),
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


def _known(library: Library) -> dict[str, set[str]]:
    """What each kind of name may be."""
    words, quantities = library.vocabulary.words, library.vocabulary.quantities
    found = {kind: set(words.get(kind, {})) for kind in ("work", "looks", "picture", "family")}
    found["structure"] = set(quantities["structure"].words) if "structure" in quantities else set()
    for kind in ("alloys", "elements"):
        found[kind] = {record_id for k, record_id in library.documents if k == kind}
    return found


def _names(fault: Fault, known: dict[str, set[str]]) -> Iterator[tuple[Location, str, set[str]]]:
    """Each name with its place and what is known of its kind."""
    for key, vocabulary in (("when", "work"), ("looks", "looks")):
        for position, word in enumerate(getattr(fault, key)):
            yield (key, position), word, known[vocabulary]
    yield ("picture",), fault.picture, known["picture"]
    yield from _which(("prone",), fault.prone, known)
    for position, cause in enumerate(fault.causes):
        for key in ("more", "less", "only"):
            yield from _which(("causes", position, key), getattr(cause, key), known)


def _which(
    at: Location, which: Which | None, known: dict[str, set[str]]
) -> Iterator[tuple[Location, str, set[str]]]:
    if which is None:
        return
    for key, kind in (("alloys", "alloys"), ("families", "family"), ("structure", "structure")):
        for position, named in enumerate(getattr(which, key)):
            yield (*at, key, position), named, known[kind]
    for symbol in which.elements:
        yield (*at, "elements", symbol), symbol, known["elements"]
