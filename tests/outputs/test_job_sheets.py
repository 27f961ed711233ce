"""Job sheets on both papers: complete, large enough for the bench, our own type, a code that leads
to the page, readable in grey."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

import pytest
import zxingcpp
from outputs.building import once, shared
from outputs.pdf_reading import MM, PageRead, Run, overlapping, read_once, rendered, squeezed
from outputs.test_pack_pdf import strings
from pypdf import PdfReader

from temperbook.derive.handbook import Handbook
from temperbook.drawing.lettering import lacks
from temperbook.drawing.route_marks import words
from temperbook.outputs.paper import sheet_pdf
from temperbook.paths import project
from temperbook.views import route as view
from temperbook.views.route import RouteShown

ROUTES = sorted(path.stem for path in (project().data / "routes").glob("*.yaml"))
SIZES = {"a4": (210, 297), "letter": (215.9, 279.4)}
TITLE, KEY, OTHER, NOTE = 10.0, 7.0, 5.0, 3.5  # least height of a capital [mm] by use, at 1 m
NEARLY = 0.99
DECIDES = "Local codes, the supplier's safety data sheet and your trainer decide."


@dataclass(frozen=True)
class Sheet:
    """A job sheet on one paper: its file, what it must say, and its pages as read."""

    size: str
    pdf: Path
    said: RouteShown
    pages: list[PageRead]

    @property
    def runs(self) -> list[Run]:
        return [run for page in self.pages for run in page.runs if run.text.strip()]

    @property
    def text(self) -> str:
        return squeezed("".join(run.text for page in self.pages for run in page.runs))


@pytest.fixture(
    scope="module",
    params=[(route, size) for route in ROUTES for size in SIZES],
    ids=lambda made: " ".join(made),
)
def sheet(
    request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory, handbook: Handbook
) -> Sheet:
    route_id, size = request.param

    def make(target: Path) -> None:
        target.write_bytes(sheet_pdf(handbook, route_id, size))

    pdf = once(shared(tmp_path_factory), f"{route_id}-{size}.pdf", make)
    return Sheet(size, pdf, view.shown(view.of(handbook)[route_id], handbook), read_once(pdf))


def test_it_is_one_sheet_of_its_paper_printed_on_both_sides_at_most(sheet: Sheet) -> None:
    assert 1 <= len(sheet.pages) <= 2
    for page in PdfReader(sheet.pdf).pages:
        box = (float(page.mediabox.width) / MM, float(page.mediabox.height) / MM)
        assert box == pytest.approx(SIZES[sheet.size], abs=0.1)


def test_every_pass_of_every_run_stands_in_its_order(sheet: Sheet) -> None:
    large = [r.text.strip() for r in sheet.runs if r.cap >= KEY * NEARLY and r.cap < TITLE]
    sizes = [text for text in large if text.replace(".", "").isdigit()]
    assert sizes == [one.size for run in sheet.said.runs for one in run.passes]


def test_runs_anneals_charge_and_cautions_are_all_there(sheet: Sheet) -> None:
    text, said = sheet.text, sheet.said
    for run in said.runs:
        for told in (f"{run.number}. {run.working} from {run.before}", run.count, *run.reductions):
            assert squeezed(told) in text, told
        for limit in (run.ceiling, run.floor):
            assert not limit or squeezed(f"{limit.label} {limit.text}") in text
    anneals = sum(run.then == "anneal" for run in said.runs)
    assert said.anneal
    if said.anneal.low is None:
        assert text.count(squeezed("Anneal by eye")) == anneals
        assert text.count(squeezed(said.anneal.by_eye[0].text)) == anneals
        assert text.count(squeezed(said.anneal.quench.text)) == anneals
    else:
        assert text.count(squeezed(f"Anneal: {words(said.anneal)}")) == anneals
    assert said.amounts
    parts = ", ".join(f"{symbol} {mass}" for symbol, _, mass in said.amounts.parts)
    assert squeezed(f"Melt {said.amounts.charge}: {parts}") in text
    for told in (*said.before, *said.after, *said.warnings, *(c.quick for c in said.cautions)):
        assert squeezed(told.rstrip(".")) in text, told


def test_every_page_says_what_it_is_what_can_hurt_and_who_decides(sheet: Sheet) -> None:
    said, count = sheet.said, len(sheet.pages)
    for number, page in enumerate(sheet.pages, 1):
        text = squeezed("".join(run.text for run in page.runs))
        for told in (
            DECIDES,
            f"{said.name}, sheet {number} of {count}",
            "Read at 1 m",
            said.edition,
            said.address.removeprefix("https://"),
            *(c.quick for c in said.cautions if c.immediate and c.signal == "DANGER"),
        ):
            assert squeezed(told) in text, (number, told)


def test_letters_are_as_high_as_their_use_needs(sheet: Sheet) -> None:
    assert min(run.cap for run in sheet.runs) >= NOTE * NEARLY
    title = [run for run in sheet.runs if run.cap >= TITLE * NEARLY]
    assert squeezed("".join(run.text for run in title)) == squeezed(sheet.said.name)
    anneal = sheet.said.anneal
    assert anneal
    heat = "Anneal by eye" if anneal.low is None else anneal.heat.text
    keys = squeezed("".join(r.text for r in sheet.runs if KEY * NEARLY <= r.cap < TITLE * NEARLY))
    assert squeezed(heat) in keys
    others = squeezed("".join(r.text for r in sheet.runs if OTHER * NEARLY <= r.cap < KEY * NEARLY))
    for told in (
        *(f"{run.number}. {run.working} from {run.before}" for run in sheet.said.runs),
        anneal.quench.text[1:],
        anneal.colour or anneal.by_eye[0].text,
        sheet.said.amounts.charge if sheet.said.amounts else "",
    ):
        assert squeezed(told) in others, told


def test_texts_stand_clear_and_inside_what_a_printer_reaches(sheet: Sheet) -> None:
    width, height = SIZES[sheet.size]
    for number, page in enumerate(sheet.pages, 1):
        assert not overlapping(page.runs), number
        for run in page.runs:
            if run.text.strip():
                assert 9 < run.left < run.right < width - 8, (number, run)
                assert run.base - run.cap > 8, (number, run)
                assert run.base < height - 5, (number, run)


def test_only_our_own_type_is_used_and_has_every_sign(sheet: Sheet) -> None:
    for told in strings(vars(sheet.said)):
        assert not lacks(told, 700), told
    fonts = set()
    for page in PdfReader(sheet.pdf).pages:
        for font in page["/Resources"]["/Font"].values():
            base = font.get_object()["/DescendantFonts"][0].get_object()
            assert {"/FontFile2", "/FontFile3"} & set(base["/FontDescriptor"].get_object())
            fonts.add(base["/BaseFont"].split("+")[1])
    assert all(name.startswith("AtkinsonHyperlegibleNext-") for name in fonts), fonts
    assert not {"\ufffd", "\x00"} & set(sheet.text)


def test_the_code_leads_to_the_page(sheet: Sheet) -> None:
    found = zxingcpp.read_barcodes(rendered(sheet.pdf, 1))
    assert [code.text for code in found] == [sheet.said.address]


def test_the_mark_of_the_anneal_is_dark_in_grey(sheet: Sheet) -> None:
    """The disc shows in the colour of the heat: far darker than paper without any colour."""
    image = rendered(sheet.pdf, 1, 100)
    heat = next(
        r for r in sheet.pages[0].runs
        if r.cap >= KEY * NEARLY and ("°C" in r.text or "by eye" in r.text)
    )  # fmt: skip
    y = round((heat.base - heat.cap / 2) / 25.4 * 100)
    # The box to tick is 7 mm wide, then 3 mm of gap, then the mark of 9 mm.
    spot = image.getpixel((round((10 + 7 + 3 + 4.5) / 25.4 * 100), y))
    anneal = sheet.said.anneal
    assert anneal
    if anneal.low is None:
        assert spot > 235
    else:
        assert spot < 120


def test_the_same_route_gives_the_same_bytes(handbook: Handbook) -> None:
    one, two = (sheet_pdf(handbook, ROUTES[0], "a4") for _ in range(2))
    assert one == two
