"""The anneal chart on every paper: sizes, words, heights of letters, type, code, looks in grey."""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise
from pathlib import Path

import pytest
import zxingcpp
from click.testing import CliRunner
from outputs.building import once, run, shared
from outputs.pdf_reading import (
    MM,
    Run,
    between,
    contrast,
    luminance,
    overlapping,
    read,
    read_once,
    rendered,
    squeezed,
)
from pypdf import PdfReader

from temperbook.cli import main
from temperbook.derive.handbook import Handbook
from temperbook.drawing import lettering, paper
from temperbook.drawing.anneal_foot import on_sheet
from temperbook.drawing.shapes import Circle, Glow, Picture, Rect, Text
from temperbook.outputs.paper import chart_sheets
from temperbook.views import anneal_chart
from temperbook.views.anneal_chart import AnnealChart

pytestmark = pytest.mark.usefixtures("read_once")
SIZES = {
    "a4": (297, 210),
    "a3": (420, 297),
    "a2": (594, 420),
    "letter": (279.4, 215.9),
    "tabloid": (431.8, 279.4),
}
# Heights of capitals [mm] that a sheet needs to be read from 2 m and from 1 m.
KEY, NAME, TITLE, LEAST = (
    {"wall": 14.0, "bench": 7.0},
    {"wall": 10.0, "bench": 5.0},
    {"wall": 20.0, "bench": 10.0},
    3.5,
)
NEARLY = 0.99
MADE = [
    ("a4", "bench"),
    ("letter", "bench"),
    ("a3", "bench"),
    ("a3", "wall"),
    ("a2", "wall"),
    ("tabloid", "wall"),
]
# The paper on which all alloys are drawn; on the others every ninth.
WHOLE = [("a3", "wall")]
PAPER = 235  # grey from which on a spot is bare paper
DARK = 120  # grey up to which a spot is ink


@dataclass(frozen=True)
class Sheets:
    """A chart on one paper: its file, what was drawn, what it must say, and its texts by page."""

    size: str
    read_at: str
    pdf: Path
    drawn: list[Picture]
    said: AnnealChart
    texts: list[list[Run]]

    def rows(self) -> Iterator[anneal_chart.ChartRow]:
        for group in self.said.groups:
            yield from group.rows


@pytest.fixture(
    scope="session",
    params=[pytest.param(made, id=" ".join(made)) for made in MADE],
)
def sheets(
    request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory, handbook: Handbook
) -> Sheets:
    size, read_at = request.param
    name = f"anneal-{size}-{read_at}.pdf"
    words: tuple[str, ...] = ("chart", "anneal", "--paper", size, "--read-at", read_at, "-o")
    alloys = list(handbook.library.alloys.values())
    if request.param not in WHOLE:
        alloys = alloys[::9]  # of most families some
        words = (*words[:-1], "--alloys", ",".join(a.id for a in alloys), "-o")
    pdf = once(shared(tmp_path_factory), name, lambda target: run(*words, str(target)))
    drawn = chart_sheets(handbook, "anneal", size, read_at, alloys)
    said = anneal_chart.shown(handbook.library.charts["anneal"], alloys, handbook)
    texts = [page.runs for page in read_once(pdf)]
    return Sheets(size, read_at, pdf, drawn, said, texts)


def test_every_page_has_the_size_of_its_paper(sheets: Sheets) -> None:
    for page in PdfReader(sheets.pdf).pages:
        box = (float(page.mediabox.width) / MM, float(page.mediabox.height) / MM)
        assert box == pytest.approx(SIZES[sheets.size], abs=0.1)
        assert page.rotation == 0
    assert len(sheets.texts) == len(sheets.drawn)


def test_every_sheet_stands_alone(sheets: Sheets) -> None:
    for found in sheets.texts:
        text = " ".join(r.text for r in found)
        there = {r.text for r in found}
        rows = [row for row in sheets.rows() if row.name in there]
        assert rows
        for words in (
            "Anneal",
            "do not enter",
            "kiln or marker, not the eye",
            f"Read at {2 if sheets.read_at == 'wall' else 1} m",
            sheets.said.edition,
            sheets.said.address.removeprefix("https://").rstrip("/"),
            *(c.quick for c in on_sheet(sheets.said, rows)),
            *sheets.said.notes,
            *(meaning for _, meaning in sheets.said.legend),
            *(meaning for _, meaning in sheets.said.cooling),
            *(lane.name for lane in sheets.said.observers),
        ):
            assert squeezed(words) in squeezed(text), words
        for tick in (400, 1100):
            assert str(tick) in text
    if len(sheets.texts) > 1:
        for number, found in enumerate(sheets.texts, 1):
            assert f"{number}/{len(sheets.texts)}" in [r.text for r in found]


def test_every_alloy_stands_once_and_with_its_figures(sheets: Sheets) -> None:
    names = Counter(r.text for found in sheets.texts for r in found if r.font.endswith("-Bold"))
    assert {row.name: names[row.name] for row in sheets.rows()} == {
        row.name: 1 for row in sheets.rows()
    }
    for row in sheets.rows():
        page = next(
            p for p in sheets.texts if any(r.text == row.name and "Bold" in r.font for r in p)
        )
        base = next(r.base for r in page if r.text == row.name and "Bold" in r.font)
        line = [r.text for r in page if abs(r.base - base) < KEY[sheets.read_at]]
        assert row.figure in line, row
        assert (row.hold or "—") in line, row


def test_a_heading_stands_over_every_group_of_rows(sheets: Sheets) -> None:
    for found in sheets.texts:
        lines = sorted(found, key=lambda r: r.base)
        titles = {g.title: {row.name for row in g.rows} for g in sheets.said.groups}
        group = None
        for text in (r.text for r in lines if r.font.endswith("-Bold")):
            if text in titles:
                group = titles[text]
            elif any(text in names for names in titles.values()):
                assert group, f"{text} stands before any heading"
                assert text in group


def test_letters_are_as_high_as_their_distance_needs(sheets: Sheets) -> None:
    at = sheets.read_at
    caps = [(r.text, r.cap) for found in sheets.texts for r in found]
    assert min(cap for _, cap in caps) >= LEAST * NEARLY
    titles = [cap for text, cap in caps if text == sheets.said.title]
    assert len(titles) == len(sheets.texts)
    assert min(titles) >= TITLE[at] * NEARLY
    for row in sheets.rows():
        assert max(cap for text, cap in caps if text == row.name) >= NAME[at] * NEARLY, row.name
        assert max(cap for text, cap in caps if text == row.figure) >= KEY[at] * NEARLY, row.figure
        if row.hold:
            assert max(cap for text, cap in caps if text == row.hold) >= NAME[at] * NEARLY, row.hold
    for group in sheets.said.groups:
        assert max(cap for text, cap in caps if text == group.title) >= NAME[at] * NEARLY


def test_the_height_of_a_capital_is_what_the_type_itself_says() -> None:
    assert lettering.cap_share() == pytest.approx(0.668, abs=0.001)


def test_texts_keep_clear_of_each_other_and_of_the_edge(sheets: Sheets) -> None:
    width, height = SIZES[sheets.size]
    for number, found in enumerate(sheets.texts, 1):
        assert not overlapping(found), f"sheet {number}"
        for r in found:
            assert r.left >= 5, (number, r)
            assert r.right <= width - 5, (number, r)
            assert r.base - r.cap >= 5, (number, r)
            assert r.base <= height - 5, (number, r)


def test_only_our_own_type_is_used_and_all_of_it_is_inside(sheets: Sheets) -> None:
    assert_own_type(sheets.pdf)


def assert_own_type(pdf: Path) -> None:
    seen = set()
    for page in PdfReader(pdf).pages:
        for font in page["/Resources"]["/Font"].values():
            base = font.get_object()["/DescendantFonts"][0].get_object()
            described = base["/FontDescriptor"].get_object()
            assert {"/FontFile2", "/FontFile3"} & set(described), base["/BaseFont"]
            assert "+AtkinsonHyperlegibleNext-" in base["/BaseFont"]
            seen.add(base["/BaseFont"].split("-")[-1])
    assert {"Regular", "Bold", "ExtraBold"} <= seen


def test_the_code_leads_to_the_chart(sheets: Sheets) -> None:
    for number in range(1, len(sheets.texts) + 1):
        found = zxingcpp.read_barcodes(rendered(sheets.pdf, number))
        assert [code.text for code in found] == [sheets.said.address]
        corners = found[0].position
        side = (corners.bottom_right.x - corners.top_left.x) / 100 * 25.4
        assert side > 15, f"{side:.0f} mm is too small for a phone"


def test_windows_and_hatching_stand_out_in_grey(sheets: Sheets) -> None:
    dpi = 150
    windows = stops = 0
    for number, picture in enumerate(sheets.drawn, 1):
        image = rendered(sheets.pdf, number, dpi)
        image.load()

        def grey(x: float, y: float, image=image) -> int:
            return image.getpixel((round(x / 25.4 * dpi), round(y / 25.4 * dpi)))

        for shape in picture.shapes:
            if isinstance(shape, Glow) and shape.stroke and shape.h > 0.5 * NAME[sheets.read_at]:
                windows += 1
                for share in (0.1, 0.5, 0.9):
                    x = shape.x + share * shape.w
                    edge = [grey(x, shape.y + step / 10) for step in range(-4, 5)]
                    assert min(edge) < DARK, (number, shape.x, shape.y)
            elif isinstance(shape, Circle) and shape.fill.startswith("#"):
                windows += 1
                assert luminance(shape.fill) < 0.4
                assert grey(shape.x, shape.y) < 200
            elif isinstance(shape, Rect) and shape.stroke == "ink" and shape.h > 4:
                stops += 1
                if shape.w < 2 * shape.h:  # the line of melting and its mark fill a narrow one
                    continue
                spots = [
                    grey(shape.x + 0.4 + n * (shape.w - 0.8) / 200, shape.y + shape.h * 0.4)
                    for n in range(201)
                ]
                assert sum(s > PAPER for s in spots) > 60, "the hatching is a solid"
                assert sum(a > 200 >= b for a, b in pairwise(spots)) >= shape.w / 8, "no hatching"
    rows = list(sheets.rows())
    assert windows >= sum(row.low is not None for row in rows)
    assert stops >= len(rows) // 2


def test_letters_on_the_glow_can_be_read(sheets: Sheets) -> None:
    # The notes are bold and above 14 point, which accessible content counts as large: 3 is enough.
    checked = 0
    for picture in sheets.drawn:
        glows = [s for s in picture.shapes if isinstance(s, Glow)]
        for text in (s for s in picture.shapes if isinstance(s, Text)):
            wide = lettering.width(text.text, text.cap, text.weight)
            left = text.x - {"start": 0, "middle": wide / 2, "end": wide}[text.anchor]
            for glow in glows:
                if not (glow.x < left and left + wide < glow.x + glow.w):
                    continue
                if not glow.y < text.y - text.cap / 2 < glow.y + glow.h:
                    continue
                checked += 1
                assert text.role.startswith("#"), text
                assert text.weight >= 700, text
                for x in (left, left + wide / 2, left + wide):
                    behind = between(list(glow.stops), (x - glow.x) / glow.w)
                    assert contrast(text.role, behind) >= 3, (text.text, text.role, behind)
    assert checked >= 5 * len(sheets.drawn)


def test_ink_on_paper_is_strong_enough() -> None:
    from temperbook.outputs.typeset.compile import PALETTE

    for role in ("ink", "ash", "ember", "verdigris"):
        assert contrast(PALETTE[role], PALETTE["paper"]) >= 7, role


def chart(*words: str):  # type: ignore[no-untyped-def]
    return CliRunner().invoke(main, ["chart", "anneal", *words])


def test_a_wall_sheet_on_a4_is_refused(tmp_path: Path) -> None:
    target = tmp_path / "wall.pdf"
    result = chart("--paper", "a4", "--read-at", "wall", "-o", str(target))
    assert result.exit_code == 2
    assert "a4 cannot be read as a wall sheet; it needs a3, a2, tabloid" in result.output
    assert not target.exists()


def test_a_bench_card_on_a2_is_refused(tmp_path: Path) -> None:
    result = chart("--paper", "a2", "--read-at", "bench", "-o", str(tmp_path / "x.pdf"))
    assert result.exit_code == 2
    assert "a2 cannot be read as a bench sheet; it needs a4, letter, a3" in result.output


@pytest.mark.parametrize(
    ("size", "read_at"),
    [("a4", "bench"), ("letter", "bench"), ("a3", "wall"), ("a2", "wall"), ("tabloid", "wall")],
)
def test_a_paper_is_lettered_for_its_usual_place(size: str, read_at: str) -> None:
    assert paper.usual_reading(size) == read_at


def test_a_workshop_s_own_alloys_fit_on_one_sheet(tmp_path: Path, handbook: Handbook) -> None:
    target = tmp_path / "own.pdf"
    result = chart("--alloys", "sterling, 18ct-yellow", "-o", str(target), "--json")
    assert result.exit_code == 0, result.output
    told = json.loads(result.stdout)
    assert told["alloys"] == ["silver/sterling-925", "gold/18ct-yellow"]
    assert (told["sheets"], told["paper"], told["read_at"]) == (1, "a3", "wall")
    pages = read(target)
    assert len(pages) == 1
    names = [r.text for r in pages[0].runs if r.font.endswith("-Bold")]
    shown = [a.short for a in handbook.library.alloys.values() if a.short in names]
    assert sorted(shown) == sorted(handbook.library.alloys[i].short for i in told["alloys"])
    assert all(names.count(name) == 1 for name in shown)


def test_an_alloy_that_is_named_twice_stands_once(tmp_path: Path) -> None:
    result = chart(
        "--alloys", "sterling,silver/sterling-925", "-o", str(tmp_path / "x.pdf"), "--json"
    )
    assert json.loads(result.stdout)["alloys"] == ["silver/sterling-925"]


@pytest.mark.parametrize(
    ("named", "suggested"),
    [("sterlng", "silver/sterling-925"), ("sterling,18ct yelow", "gold/18ct-yellow")],
)
def test_an_unknown_alloy_brings_near_names(named: str, suggested: str, tmp_path: Path) -> None:
    target = tmp_path / "x.pdf"
    result = chart("--alloys", named, "-o", str(target))
    assert result.exit_code == 2
    assert "No alloy is called" in result.output
    assert suggested in result.output
    assert not target.exists()


@pytest.mark.parametrize("named", ["", " , ", "unobtainium"])
def test_no_alloy_is_a_wrong_use(named: str, tmp_path: Path) -> None:
    result = chart("--alloys", named, "-o", str(tmp_path / "x.pdf"))
    assert result.exit_code == 2
    assert result.output.strip()


def test_a_chart_that_there_is_not_brings_the_near_one(tmp_path: Path) -> None:
    result = CliRunner().invoke(main, ["chart", "aneal", "-o", str(tmp_path / "x.pdf")])
    assert result.exit_code == 2
    assert "no chart is called `aneal`" in result.output
    assert "anneal" in result.output.split("aneal`")[1]


def test_a_file_that_cannot_be_written_is_a_wrong_use(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("")
    result = chart("--alloys", "sterling", "-o", str(tmp_path / "file" / "x.pdf"))
    assert result.exit_code == 2
    assert "cannot write" in result.output
