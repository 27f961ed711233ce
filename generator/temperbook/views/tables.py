"""The section of tables: elements, gauges, sizes, finenesses, pickles, fluxes, limits, systems."""

from __future__ import annotations

from dataclasses import dataclass, field

from temperbook.derive.handbook import Handbook
from temperbook.records.models import Element
from temperbook.views import pages, routes
from temperbook.views.comparing.tables import Cell, Row
from temperbook.views.comparing.tables import figure as cell
from temperbook.views.pages import CautionShown, Link

# Folder of subjects -> what its list is called; others follow under their own name.
TITLES = {
    "gauge": "Gauges of wire and sheet",
    "ring-size": "Ring sizes",
    "fineness": "Fineness and the law, by country",
    "bench": "The bench: pickle, flux, glow, grain, limits",
    "system": "Systems of metals",
    "family": "Families of alloys",
}
ELEMENT_HEADS = ["Element", "Density", "Melts at", "Atomic mass"]
ELEMENT_COLUMNS = ("density", "melting-point", "atomic-mass")


@dataclass(frozen=True)
class Listed:
    """A list of the section: a table where it has rows, links where it has none."""

    title: str
    anchor: str
    links: list[Link] = field(default_factory=list)
    heads: list[str] = field(default_factory=list)
    rows: list[Row] = field(default_factory=list)


def listed(handbook: Handbook) -> list[Listed]:
    """The lists: elements first, then the folders of subjects."""
    elements = sorted(handbook.library.elements.values(), key=lambda element: element.name)
    rows = [_element(element, handbook) for element in elements]
    first = Listed("The elements", "elements", heads=ELEMENT_HEADS, rows=rows)
    folders: dict[str, list[Link]] = {}
    for subject_id, subject in handbook.library.subjects.items():
        folder = subject_id.split("/")[0]
        link = Link(subject.name, routes.page("subjects", subject_id), subject.about or "")
        folders.setdefault(folder, []).append(link)
    order = [*(f for f in TITLES if f in folders), *(f for f in folders if f not in TITLES)]
    others = [Listed(TITLES.get(f, f.capitalize()), f, folders[f]) for f in order]
    return [*([first] if rows else []), *others]


def _element(element: Element, handbook: Handbook) -> Row:
    cells = []
    for quantity in ELEMENT_COLUMNS:
        figures = element.figures.get(quantity, [])
        cells.append(
            cell(element.id, quantity, figures[0], handbook) if figures else Cell("—", "none found")
        )
    return Row(Link(f"{element.name}, {element.id}", routes.page("elements", element.id)), cells)


def cautions_of(element: Element, handbook: Handbook) -> list[CautionShown]:
    """The cautions that come with an element, gravest first."""
    found = [
        caution.id
        for caution in handbook.library.cautions.values()
        if element.id in caution.applies.elements
    ]
    return pages.cautions(found, handbook)
