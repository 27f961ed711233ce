"""Rules and remarks: statements of a record that are no figures, with their provenance in words."""

from __future__ import annotations

from dataclasses import dataclass

from temperbook.derive.handbook import Handbook
from temperbook.records.figures import Provenance, Remark
from temperbook.views import figure_rows, formatting, pages
from temperbook.views.formatting import MARKS
from temperbook.views.pages import Link


@dataclass(frozen=True)
class RuleShown:
    """How to cool or pickle, in words."""

    label: str
    text: str
    mark: str
    how: str
    why: str
    sources: list[Link]
    grade: str


@dataclass(frozen=True)
class RemarkShown:
    """A sentence with its provenance."""

    text: str
    mark: str
    how: str
    sources: list[Link]
    grade: str


def rule(label: str, text: str, stated: Provenance, handbook: Handbook) -> RuleShown:
    """A statement under a label."""
    sources = formatting.sources_of(stated.from_, handbook.library)
    return RuleShown(
        label,
        text,
        MARKS[stated.how],
        handbook.library.vocabulary.label("how", stated.how),
        stated.why or "",
        [pages.source_link(s, handbook) for s in sources],
        figure_rows.standing(stated.from_, handbook),
    )


def remarks(given: list[Remark], handbook: Handbook) -> list[RemarkShown]:
    """A record's remarks."""
    return [_remark(remark.text, remark, handbook) for remark in given]


def _remark(text: str, stated: Provenance, handbook: Handbook) -> RemarkShown:
    sources = formatting.sources_of(stated.from_, handbook.library)
    return RemarkShown(
        text,
        MARKS[stated.how],
        handbook.library.vocabulary.label("how", stated.how),
        [pages.source_link(s, handbook) for s in sources],
        figure_rows.standing(stated.from_, handbook),
    )
