"""A made-up handbook becomes a whole site: nothing in the outputs knows the real one's records."""

from __future__ import annotations

import shlex
from collections.abc import Mapping
from pathlib import Path

import pytest
from click.testing import CliRunner
from outputs.building import once, shared, small_site
from outputs.html_tree import Element, Pages, dead_links
from outputs.pdf_reading import read, squeezed

from temperbook.cli import main
from temperbook.derive.handbook import Handbook
from temperbook.outputs.making import checked_handbook
from temperbook.paths import project
from temperbook.views import pack, site


@pytest.fixture(scope="session")
def built_small(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The small handbook's project with its site in `site/`."""
    return once(shared(tmp_path_factory), "small", small_site)


@pytest.fixture(scope="session")
def small_pages(built_small: Path) -> Mapping[str, Element]:
    return Pages(built_small / "site")


@pytest.fixture(scope="session")
def small_handbook(built_small: Path) -> Handbook:
    return checked_handbook(project(built_small))


def test_every_page_is_there_and_leads_only_to_others(
    small_pages: Mapping[str, Element], small_handbook: Handbook, built_small: Path
) -> None:
    assert set(small_pages) == {p.address or "/" for p in site.all_pages(small_handbook)}
    wrong, followed = dead_links(small_pages, built_small / "site")
    assert not wrong
    assert followed > 10 * len(small_pages)


def test_no_record_of_the_real_handbook_is_named(
    small_pages: Mapping[str, Element], handbook: Handbook
) -> None:
    alloys = handbook.library.alloys.values()
    names = {n for a in alloys for n in (a.name, a.id, a.id.split("/")[1]) if len(n) > 6}
    for address, page in small_pages.items():
        text = page.one("main").text().lower()
        assert not {name for name in names if name.lower() in text}, address


def test_every_command_that_a_page_shows_works(
    small_pages: Mapping[str, Element], built_small: Path, tmp_path: Path
) -> None:
    shown = [
        shlex.split(code.text())
        for address, page in small_pages.items()
        for code in page.one("main").all("code")
        if code.text().startswith("temperbook ") and address != "how-we-choose/"
    ]
    assert len(shown) >= 2
    for number, (_, *words) in enumerate(shown):
        target = tmp_path / f"{number}.pdf"
        printing = words[0] in ("chart", "pack")
        output = ["-o", str(target)] if printing else []
        result = CliRunner().invoke(main, ["--project", str(built_small), *words, *output])
        assert result.exit_code == 0, (words, result.output)
        assert not printing or target.read_bytes().startswith(b"%PDF-")


def test_chart_and_pack_are_on_paper(built_small: Path, small_handbook: Handbook) -> None:
    (chart_id,) = small_handbook.library.charts
    (pack_id,) = small_handbook.library.packs
    folder = built_small / "site"
    for size in ("a4", "a3"):
        pages = read(folder / f"wall-charts/{chart_id}/{chart_id}-{size}.pdf")
        assert len(pages) == 1
        said = [r.text for r in pages[0].runs]
        for alloy in small_handbook.library.alloys.values():
            assert said.count(alloy.short) == 1, alloy.id
    shown = pack.shown(small_handbook.library.packs[pack_id], small_handbook)
    for size in ("a4", "letter"):
        pages = read(folder / f"reading-packs/{pack_id}/{pack_id}-{size}.pdf")
        said = squeezed("".join(r.text for page in pages for r in page.runs))
        for chapter in shown.chapters:
            assert said.count(squeezed(chapter.title)) >= 2, chapter.title
        for exercise in shown.exercises:
            for name, value in exercise.answers:
                assert squeezed(f"{name} {value}") in said, (name, value)
