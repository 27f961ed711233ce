"""What every page of the site has, whatever its kind."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from temperbook.derive.cautions import rank
from temperbook.derive.handbook import Handbook
from temperbook.records.models import Caution, Source
from temperbook.views import formatting, routes


@dataclass(frozen=True)
class Page:
    """A page: its address, kind (which names its template), title, and what it says."""

    address: str
    kind: str
    title: str
    says: Any
    summary: str = ""


@dataclass(frozen=True)
class Link:
    """A word that leads to a page."""

    text: str
    href: str
    note: str = ""


@dataclass(frozen=True)
class CautionShown:
    """A caution as other pages show it."""

    name: str
    signal: str
    quick: str
    href: str
    immediate: bool


def caution(record: Caution) -> CautionShown:
    """A caution's short form."""
    return CautionShown(
        record.name,
        record.signal.upper(),
        record.quick,
        routes.page("cautions", record.id),
        record.immediate,
    )


def cautions(ids: list[str], handbook: Handbook) -> list[CautionShown]:
    """The short forms of several cautions, gravest first."""
    return [caution(c) for c in sorted((handbook.library.cautions[i] for i in ids), key=rank)]


def source_link(source_id: str, handbook: Handbook) -> Link:
    """A source by publisher and year, leading to its page."""
    source = handbook.library.sources[source_id]
    return Link(short_source(source), routes.page("sources", source_id), source.title)


def short_source(source: Source) -> str:
    """`NIST Metallurgy Division, 2003`."""
    return f"{source.by}, {source.year}" if source.year else source.by


def legend() -> list[tuple[str, str]]:
    """Every provenance mark with its meaning."""
    return list(formatting.LEGEND)
