"""Pages of systems, families and bench rules, of elements and of observers' colour tables."""

from __future__ import annotations

from dataclasses import dataclass

from temperbook.derive.handbook import Handbook
from temperbook.records.models import ColourTable, Element, Subject
from temperbook.views import figure_rows, pages, routes, statements, tables
from temperbook.views.figure_rows import Group, Reading
from temperbook.views.pages import CautionShown, Link, Page
from temperbook.views.statements import RemarkShown, RuleShown


@dataclass(frozen=True)
class SubjectShown:
    """What such a page says; `members` are the alloys that belong to it."""

    name: str
    about: str
    groups: list[Group]
    remarks: list[RemarkShown]
    rules: list[RuleShown]
    readings: list[Reading]
    members: list[Link]
    cautions: list[CautionShown]
    legend: list[tuple[str, str]]


def all_pages(handbook: Handbook) -> list[Page]:
    """A page for each record that bears figures and is neither alloy nor caution."""
    library = handbook.library
    records: list[tuple[str, Subject | Element | ColourTable]] = [
        *(("subjects", r) for r in library.subjects.values()),
        *(("elements", r) for r in library.elements.values()),
        *(("colours", r) for r in library.colours.values()),
    ]
    return [
        Page(
            routes.page(kind, record.id),
            "subject",
            record.name,
            shown(record, handbook),
            _about(record),
        )
        for kind, record in records
    ]


def shown(record: Subject | Element | ColourTable, handbook: Handbook) -> SubjectShown:
    """What one page says."""
    remarks = record.remarks if isinstance(record, Subject) else []
    rows = handbook.readings.get(record.id, [])
    return SubjectShown(
        name=record.name,
        about=_about(record),
        groups=figure_rows.groups(record.id, record.figures, handbook),
        remarks=statements.remarks(remarks, handbook),
        rules=_rules(record, handbook),
        readings=figure_rows.readings(rows, handbook, record.id),
        members=_members(record, handbook),
        cautions=tables.cautions_of(record, handbook) if isinstance(record, Element) else [],
        legend=pages.legend(),
    )


def _rules(record: Subject | Element | ColourTable, handbook: Handbook) -> list[RuleShown]:
    if not isinstance(record, Subject) or record.cooling is None:
        return []
    words = handbook.library.vocabulary.quantities["cooling"].words
    return [statements.rule("Cooling", words[record.cooling.rule], record.cooling, handbook)]


def _about(record: Subject | Element | ColourTable) -> str:
    if isinstance(record, ColourTable):
        return record.observer
    return (record.about or "") if isinstance(record, Subject) else ""


def _members(record: Subject | Element | ColourTable, handbook: Handbook) -> list[Link]:
    return [
        Link(alloy.name, routes.page("alloys", alloy_id))
        for alloy_id, alloy in handbook.library.alloys.items()
        if record.id in alloy.subjects or record.id in alloy.composition
    ]
