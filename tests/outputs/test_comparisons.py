"""Comparison pages, solders and tables: what is drawn and what stands below it is what the records
say."""

from __future__ import annotations

import re
from collections.abc import Mapping

from outputs.html_tree import Element

from temperbook.derive import limits
from temperbook.derive.handbook import Handbook
from temperbook.views import routes
from temperbook.views.comparing.pages import TOPICS

MINUS = "−"


def rows(page: Element) -> dict[str, list[Element]]:
    """Rows of the tables of a comparison by the name of the alloy."""
    found: dict[str, list[Element]] = {}
    for table in page.all("table", "compared"):
        for row in table.one("tbody").all("tr"):
            found.setdefault(row.one("th").text(), []).append(row)
    return found


def cells(row: Element) -> list[str]:
    return [cell.text().replace("\u00a0", " ") for cell in row.all("td")]


def test_every_alloy_stands_in_every_comparison(
    pages: Mapping[str, Element], handbook: Handbook
) -> None:
    names = {alloy.name for alloy in handbook.library.alloys.values()}
    for stem in TOPICS:
        found = rows(pages[f"{stem}/"])
        if stem == "compare/hardening":
            assert set(found) < names
            assert len(found) >= 15
        else:
            assert set(found) == names, stem
            assert all(len(given) == 1 for given in found.values()), stem


def test_each_plot_is_followed_by_its_table_and_follows_light_and_dark(
    pages: Mapping[str, Element],
) -> None:
    """Colours are roles of the palette; a colour of its own has only the glow of a heat."""
    drawn = 0
    for stem in TOPICS:
        for part in pages[f"{stem}/"].all("section", "part"):
            pictures = part.all("svg", "drawn")
            assert len(pictures) <= 1
            for picture in pictures:
                drawn += 1
                assert picture.attrs["role"] == "img"
                alt = picture.attrs["aria-label"]
                named = [r.one("th").text() for r in part.one("tbody").all("tr")]
                if stem != "compare/hardening":
                    assert [n for n in named if n in alt], alt
                for shape in picture.walk():
                    for key in ("fill", "stroke"):
                        paint = shape.attrs.get(key, "none")
                        assert re.fullmatch(r"none|var\(--\w+\)|url\(#[\w-]+\)", paint), paint
    assert drawn >= 4 * 6


def test_anneals_in_the_table_are_those_of_the_records(
    pages: Mapping[str, Element], handbook: Handbook
) -> None:
    found = rows(pages["compare/anneals/"])
    known = 0
    for alloy in handbook.library.alloys.values():
        anneal, *_ = cells(found[alloy.name][0])
        figure = limits.anneal(alloy)
        if figure is None:
            assert anneal.startswith("—"), alloy.id
            continue
        known += 1
        numbers = {float(n) for n in re.findall(r"\d+", anneal.split("°C")[0])}
        assert numbers == {round(e) for e in figure.ends if e is not None}, alloy.id
        link = found[alloy.name][0].all("a")[1].attrs["href"]
        assert link.partition("#")[0].endswith(routes.page("alloys", alloy.id)), alloy.id
    assert known > 0.8 * len(found)


def test_limits_are_drawn_on_the_area_and_say_their_own_basis(
    pages: Mapping[str, Element], handbook: Handbook
) -> None:
    found = rows(pages["compare/limits/"])
    words = {"thickness": "of the thickness", "area": "of the area", "diameter": "of the diameter"}
    for alloy in handbook.library.alloys.values():
        figure = limits.ceiling(alloy)
        said = cells(found[alloy.name][0])[0]
        if figure is None:
            assert said.startswith("—"), alloy.id
        else:
            assert words.get(figure.of or "", "basis not stated") in said, alloy.id


def test_densities_stand_beside_those_by_mixing(
    pages: Mapping[str, Element], handbook: Handbook
) -> None:
    """The difference is worked again from the two numbers that stand there."""
    compared = 0
    for name, (row,) in rows(pages["compare/densities/"]).items():
        published, mixed, off = cells(row)
        if off.startswith("—"):
            continue
        compared += 1
        ends = [float(n) for n in re.findall(r"\d+(?:\.\d+)?", published.split("g/cm")[0])]
        other = float(re.findall(r"\d+(?:\.\d+)?", mixed)[0])
        again = 100 * (sum(ends) / len(ends) / other - 1)
        said = float(off.split(" ")[0].replace(MINUS, "-"))
        assert abs(said - again) < 0.15, (name, said, again)
    assert compared >= 30


def test_each_rule_of_cooling_gives_its_reason(
    pages: Mapping[str, Element], handbook: Handbook
) -> None:
    found = rows(pages["compare/cooling/"])
    for alloy in handbook.library.alloys.values():
        if alloy.quench and alloy.quench.why:
            assert alloy.quench.why in cells(found[alloy.name][0])[-1], alloy.id


def test_a_solders_margin_is_what_lies_between_it_and_the_metal(
    pages: Mapping[str, Element], handbook: Handbook
) -> None:
    library = handbook.library
    compared = 0
    for solder in library.solders.values():
        page = pages[routes.page("solders", solder.id)]
        joined = page.all("section")
        for table in [s for s in joined if s.attrs.get("id") == "joins"]:
            for row in table.one("tbody").all("tr"):
                alloy = next(a for a in library.alloys.values() if a.name == row.one("th").text())
                stop = limits.stop(alloy)
                flows = solder.figures.get("liquidus") or solder.figures.get("melting-point")
                if stop is None or flows is None:
                    assert "not known" in row.text(), (solder.id, alloy.id)
                    continue
                margin = limits.lowest(stop[1]) - limits.highest(flows[0])
                compared += 1
                text = row.one("td").text().replace("\u00a0", " ")
                assert text.startswith(f"{margin:.0f} K"), (solder.id, alloy.id)
                close = margin < limits.eye_error(handbook)
                assert ("closer than an eye" in text) == close, (solder.id, alloy.id)
    assert compared >= 10


def test_a_solder_that_poisons_says_so_before_all_else(
    pages: Mapping[str, Element], handbook: Handbook
) -> None:
    poisoned = [s for s in handbook.library.solders.values() if s.composition.get("Cd")]
    for solder in poisoned:
        text = pages[routes.page("solders", solder.id)].one("main").text()
        assert "Neither melt nor use it" in text, solder.id
        assert text.index("Neither melt") < text.index("Composition:"), solder.id


def test_tables_lead_to_every_element_and_subject(
    pages: Mapping[str, Element], handbook: Handbook
) -> None:
    linked = {a.attrs["href"].removeprefix("../") for a in pages["tables/"].one("main").all("a")}
    library = handbook.library
    wanted = {routes.page("elements", i) for i in library.elements}
    wanted |= {routes.page("subjects", i) for i in library.subjects}
    assert wanted <= linked


def test_an_elements_page_carries_its_cautions(pages: Mapping[str, Element]) -> None:
    assert "Zinc" in pages["elements/Zn/"].one("h1").text()
    cautions = [s for s in pages["elements/Zn/"].all("section") if s.attrs.get("id") == "cautions"]
    assert "fume" in cautions[0].text().lower()


def test_each_figure_says_what_kind_of_source_it_has(
    pages: Mapping[str, Element], handbook: Handbook
) -> None:
    """The kind of the best source, and whether the work itself was read."""
    library = handbook.library
    words = library.vocabulary
    checked = 0
    for called in handbook.figures.values():
        if called.record != "silver/sterling-925" or not called.figure.from_:
            continue
        best = min(called.figure.from_, key=lambda row: library.evidence[row].grade)
        source = library.sources[library.evidence[best].source]
        place = routes.figure(called.address, library)
        page, _, anchor = place.partition("#")
        row = next(e for e in pages[page].all("tr") if e.attrs.get("id") == anchor)
        assert words.label("source-kind", source.kind) in row.text(), called.address
        assert words.label("read", source.read) in row.text(), called.address
        checked += 1
    assert checked > 40
