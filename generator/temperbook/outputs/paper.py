"""Charts, packs and job sheets as files: which papers, their names, and the bytes of each."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, field
from typing import TypeAlias

from temperbook.derive.handbook import Handbook
from temperbook.drawing import anneal_sheet, paper, picture_facts
from temperbook.drawing.shapes import Picture
from temperbook.outputs.typeset import job_sheet
from temperbook.outputs.typeset import pack as typeset_pack
from temperbook.outputs.typeset.compile import compiled, sheets_data
from temperbook.records.models import Alloy
from temperbook.views import anneal_chart, route, routes
from temperbook.views import pack as pack_view
from temperbook.views.pages import Link

# Charts that a build makes, besides those that `temperbook chart` makes on demand.
CHART_PAPERS = ("a4", "a3")
PACK_PAPERS = ("a4", "letter")
SHEET_PAPERS = ("a4", "letter")
AT_ONCE = 2  # papers that are set beside one another


@dataclass(frozen=True)
class Printed:
    """One PDF: its address below the site's root, title, size in words, and previews of its
    sheets."""

    href: str
    title: str
    said: str
    previews: list[Link] = field(default_factory=list)


@dataclass(frozen=True)
class Papers:
    """All paper of a build: files by address, and what each page offers."""

    files: dict[str, bytes]
    by_page: dict[str, list[Printed]]


Made: TypeAlias = tuple[Printed, dict[str, bytes]]
Make: TypeAlias = Callable[[Handbook, str, str], Made]


def chart_sheets(
    handbook: Handbook, chart_id: str, size: str, read_at: str, alloys: Sequence[Alloy]
) -> list[Picture]:
    """The sheets of a chart for some alloys."""
    said = anneal_chart.shown(handbook.library.charts[chart_id], alloys, handbook)
    return anneal_sheet.draw(said, size, read_at, handbook.glow.colour)


def chart_pdf(handbook: Handbook, sheets: Sequence[Picture], title: str) -> bytes:
    """Sheets as one PDF."""
    return compiled("sheet.typ", sheets_data(sheets, title), handbook.library.edition.date)[0]


def pack_pdf(handbook: Handbook, pack_id: str, size: str) -> bytes:
    """A reading pack as one PDF."""
    said = pack_view.shown(handbook.library.packs[pack_id], handbook)
    data = typeset_pack.data(said, size, picture_facts.of(handbook))
    return compiled("pack.typ", data, handbook.library.edition.date)[0]


def sheet_pdf(handbook: Handbook, route_id: str, size: str) -> bytes:
    """The job sheet of a route as one PDF."""
    said = route.shown(route.of(handbook)[route_id], handbook)
    data = job_sheet.data(said, size, handbook.glow.colour)
    return compiled("job_sheet.typ", data, handbook.library.edition.date)[0]


def all_papers(handbook: Handbook, tell: Callable[[str], None] = lambda text: None) -> Papers:
    """Every chart at A4 and A3 with previews, and every pack and route at A4 and Letter, some at
    once: each is set by a process of its own."""
    library = handbook.library
    wanted: list[tuple[Make, str, str]] = [
        *((_chart, chart_id, size) for chart_id in library.charts for size in CHART_PAPERS),
        *((_pack, pack_id, size) for pack_id in library.packs for size in PACK_PAPERS),
        *((_job_sheet, route_id, size) for route_id in route.of(handbook) for size in SHEET_PAPERS),
    ]
    tell(f"{len(wanted)} papers")
    with ThreadPoolExecutor(AT_ONCE) as pool:
        made = list(pool.map(lambda one: one[0](handbook, one[1], one[2]), wanted))
    files: dict[str, bytes] = {}
    by_page: dict[str, list[Printed]] = {}
    for printed, found in made:
        files |= found
        by_page.setdefault(printed.href.rsplit("/", 1)[0] + "/", []).append(printed)
    return Papers(files, by_page)


def _job_sheet(handbook: Handbook, route_id: str, size: str) -> Made:
    href = f"{routes.page('routes', route_id)}{route_id}-{size}.pdf"
    content = sheet_pdf(handbook, route_id, size)
    said = f"read at {paper.LETTERING['bench'].metres} m, PDF, {len(content) // 1000} kB"
    return Printed(href, f"Job sheet, {_paper_name(size)}", said), {href: content}


def _chart(handbook: Handbook, chart_id: str, size: str) -> Made:
    read_at = paper.usual_reading(size)
    alloys = list(handbook.library.alloys.values())
    title = handbook.library.charts[chart_id].title
    sheets = chart_sheets(handbook, chart_id, size, read_at, alloys)
    stem = f"{routes.page('charts', chart_id)}{chart_id}-{size}"
    content = chart_pdf(handbook, sheets, title)
    previews, images = _previews(handbook, sheets, stem)
    kind = "Wall sheet" if read_at == "wall" else "Bench card"
    metres = paper.LETTERING[read_at].metres
    said = f"{len(sheets)} sheets, read at {metres} m, PDF, {len(content) // 1000} kB"
    printed = Printed(f"{stem}.pdf", f"{kind}, {size.upper()}", said, previews)
    return printed, {printed.href: content, **images}


def _previews(
    handbook: Handbook, sheets: Sequence[Picture], stem: str
) -> tuple[list[Link], dict[str, bytes]]:
    data = sheets_data(sheets, stem)
    images = compiled("sheet.typ", data, handbook.library.edition.date, "png", ppi=96)
    hrefs = [f"{stem}-{number}.png" for number in range(1, len(sheets) + 1)]
    links = [Link(sheet.alt, href) for sheet, href in zip(sheets, hrefs, strict=True)]
    return links, dict(zip(hrefs, images, strict=True))


def _pack(handbook: Handbook, pack_id: str, size: str) -> Made:
    href = f"{routes.page('packs', pack_id)}{pack_id}-{size}.pdf"
    content = pack_pdf(handbook, pack_id, size)
    said = f"PDF, {len(content) // 1000} kB"
    return Printed(href, f"To print, {_paper_name(size)}", said), {href: content}


def _paper_name(size: str) -> str:
    return size.upper() if size == "a4" else size.capitalize()
