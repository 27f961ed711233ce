"""Charts, packs and job sheets as files: which papers, their names, and the bytes of each."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, field

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
AT_ONCE = 2  # job sheets that are set beside one another


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
    """Every chart at A4 and A3 with previews, and every pack and route at A4 and Letter."""
    files: dict[str, bytes] = {}
    by_page: dict[str, list[Printed]] = {}
    for chart_id in handbook.library.charts:
        tell(f"chart {chart_id}")
        folder = routes.page("charts", chart_id)
        by_page[folder] = [_chart(handbook, chart_id, size, folder, files) for size in CHART_PAPERS]
    for pack_id in handbook.library.packs:
        tell(f"pack {pack_id}")
        folder = routes.page("packs", pack_id)
        by_page[folder] = [_pack(handbook, pack_id, size, folder, files) for size in PACK_PAPERS]
    if route.of(handbook):
        tell("job sheets")
        by_page |= _job_sheets(handbook, files)
    return Papers(files, by_page)


def _job_sheets(handbook: Handbook, files: dict[str, bytes]) -> dict[str, list[Printed]]:
    """The job sheets of every route, set some at once: each has a process of its own."""
    wanted = [(route_id, size) for route_id in route.of(handbook) for size in SHEET_PAPERS]
    with ThreadPoolExecutor(AT_ONCE) as pool:
        made = pool.map(lambda one: sheet_pdf(handbook, *one), wanted)
    found: dict[str, list[Printed]] = {}
    for (route_id, size), content in zip(wanted, made, strict=True):
        folder = routes.page("routes", route_id)
        href = f"{folder}{route_id}-{size}.pdf"
        files[href] = content
        said = f"read at {paper.LETTERING['bench'].metres} m, PDF, {len(content) // 1000} kB"
        found.setdefault(folder, []).append(Printed(href, f"Job sheet, {_paper_name(size)}", said))
    return found


def _chart(
    handbook: Handbook, chart_id: str, size: str, folder: str, files: dict[str, bytes]
) -> Printed:
    read_at = paper.usual_reading(size)
    alloys = list(handbook.library.alloys.values())
    title = handbook.library.charts[chart_id].title
    sheets = chart_sheets(handbook, chart_id, size, read_at, alloys)
    href = f"{folder}{chart_id}-{size}.pdf"
    files[href] = chart_pdf(handbook, sheets, title)
    previews = _previews(handbook, sheets, f"{folder}{chart_id}-{size}", files)
    kind = "Wall sheet" if read_at == "wall" else "Bench card"
    metres = paper.LETTERING[read_at].metres
    said = f"{len(sheets)} sheets, read at {metres} m, PDF, {len(files[href]) // 1000} kB"
    return Printed(href, f"{kind}, {size.upper()}", said, previews)


def _previews(
    handbook: Handbook, sheets: Sequence[Picture], stem: str, files: dict[str, bytes]
) -> list[Link]:
    data = sheets_data(sheets, stem)
    images = compiled("sheet.typ", data, handbook.library.edition.date, "png", ppi=96)
    found = []
    for number, (image, sheet) in enumerate(zip(images, sheets, strict=True), 1):
        href = f"{stem}-{number}.png"
        files[href] = image
        found.append(Link(sheet.alt, href))
    return found


def _pack(
    handbook: Handbook, pack_id: str, size: str, folder: str, files: dict[str, bytes]
) -> Printed:
    href = f"{folder}{pack_id}-{size}.pdf"
    files[href] = pack_pdf(handbook, pack_id, size)
    return Printed(href, f"To print, {_paper_name(size)}", f"PDF, {len(files[href]) // 1000} kB")


def _paper_name(size: str) -> str:
    return size.upper() if size == "a4" else size.capitalize()
