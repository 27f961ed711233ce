"""Pages of cautions: what can hurt, how to keep it from hurting, who decides, where it applies."""

from __future__ import annotations

import re
from dataclasses import dataclass

from temperbook.derive.cautions import rank
from temperbook.derive.handbook import Handbook
from temperbook.records.models import Caution
from temperbook.views import figure_rows, pages, routes
from temperbook.views.figure_rows import Group, Reading
from temperbook.views.pages import CautionShown, Link, Page


@dataclass(frozen=True)
class CautionPage:
    """What a caution's page says."""

    head: CautionShown
    hazard: str
    consequence: str
    signs: list[tuple[str, str]]
    faults: list[Link]
    avoid: list[str]
    first_aid: list[str]
    decides: str
    tasks: list[str]
    groups: list[Group]
    readings: list[Reading]
    alloys: list[Link]
    solders: list[Link]
    everywhere: bool
    packs: list[Link]
    charts: list[Link]


def all_pages(handbook: Handbook) -> list[Page]:
    """A page for each caution."""
    return [
        Page(routes.page("cautions", c.id), "caution", c.name, shown(c, handbook), c.quick)
        for c in handbook.library.cautions.values()
    ]


def shown(record: Caution, handbook: Handbook) -> CautionPage:
    """What one page says."""
    library = handbook.library
    own = handbook.readings.get(record.id, [])
    named = [library.evidence[i] for i in record.from_ if library.evidence[i] not in own]
    return CautionPage(
        head=pages.caution(record),
        hazard=record.hazard,
        consequence=record.consequence or "",
        signs=[(s, library.vocabulary.label("sign", s)) for s in record.signs],
        faults=[
            Link(f.name, routes.page("faults", i))
            for i, f in library.faults.items()
            if record.id in f.cautions
        ],
        avoid=record.avoid,
        first_aid=sentences(record.first_aid or ""),
        decides=record.decides,
        tasks=record.tasks,
        groups=figure_rows.groups(record.id, record.figures, handbook),
        readings=figure_rows.readings([*own, *named], handbook, record.id),
        alloys=[Link(a.name, routes.page("alloys", a.id)) for a in handbook.alloys_with(record.id)],
        solders=[
            Link(s.name, routes.page("solders", s.id)) for s in handbook.solders_with(record.id)
        ],
        everywhere=record.applies.always,
        packs=[Link(p.title, routes.page("packs", p.id)) for p in handbook.packs_with(record.id)],
        charts=[
            Link(c.title, routes.page("charts", c.id)) for c in handbook.charts_with(record.id)
        ],
    )


def sentences(text: str) -> list[str]:
    """A text by its sentences, so that whoever needs help reads a line at a time."""
    return re.split(r"(?<=\.) (?=[A-Z])", text) if text else []


def listed(handbook: Handbook) -> list[CautionShown]:
    """Every caution, gravest first, for their index."""
    return [pages.caution(c) for c in sorted(handbook.library.cautions.values(), key=rank)]
