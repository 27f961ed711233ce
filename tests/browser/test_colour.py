"""Paper, soot and print: text can be read in all of them."""

from __future__ import annotations

import io

import pytest
from browser.looking import Open, background, contrast, luminance, style
from pypdf import PdfReader

ALLOY = "alloys/silver/sterling-925/"
READ = ["body", "#about p", ".limit-figure", ".limit-said", ".limit-label", "h1", "td", "main a",
        ".foot-words p", ".name span", ".caution-now"]  # fmt: skip


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_text_stands_out_by_seven_to_one(scheme: str, visit: Open) -> None:
    page = visit(ALLOY, scheme=scheme).page
    for selector in READ:
        ratio = contrast(style(page, selector, "color"), background(page, selector))
        assert ratio >= 7, f"{selector}: {ratio:.1f}"


def test_the_two_schemes_are_two(visit: Open) -> None:
    light, dark = (visit(ALLOY, scheme=scheme).page for scheme in ("light", "dark"))
    assert luminance(background(light, "#about p")) > 0.8
    assert luminance(background(dark, "#about p")) < 0.05


@pytest.mark.parametrize(
    ("address", "chosen"),
    [
        (ALLOY, False),
        (ALLOY, True),
        ("", False),
        ("reduction/", False),
        ("cautions/pickle-acid/", True),
    ],
)
def test_a_dark_page_prints_light(address: str, chosen: bool, visit: Open) -> None:
    page = visit(address, scheme="dark").page
    if chosen:  # the reader's own choice must not print dark either
        page.locator("button.scheme").click()
        page.locator("button.scheme").click()
        assert page.evaluate("document.documentElement.dataset.scheme") == "soot"
    page.emulate_media(media="print", color_scheme="dark")
    for selector in ("html", "main p", "h1", ".head"):
        behind, ink = background(page, selector), style(page, selector, "color")
        assert luminance(behind) > 0.9, (selector, behind)
        assert contrast(ink, behind) >= 7, (selector, ink, behind)


def test_print_leaves_out_what_paper_cannot_do(visit: Open) -> None:
    page = visit(ALLOY).page
    page.emulate_media(media="print")
    for selector in (".bar", ".scheme", ".find", ".contents", ".sections", ".skip"):
        assert not page.locator(selector).first.is_visible(), selector
    for selector in ("h1", ".limits .limit", ".limits .caution-now", ".legend", ".foot-address"):
        assert page.locator(selector).first.is_visible(), selector
    assert "alloys/silver/sterling-925" in page.locator(".foot-address").inner_text()


def test_an_alloy_prints_as_a_pdf_with_its_limits(visit: Open) -> None:
    page = visit(ALLOY, scheme="dark").page
    readings = page.locator(".fold > summary").inner_text()
    printed = PdfReader(io.BytesIO(page.pdf(format="A4"))).pages
    first = printed[0].extract_text()
    for words in ("Sterling silver", "Anneal", "Between anneals", "Cooling", "Do not exceed"):
        assert words in first
    assert readings.endswith("readings")
    assert readings in "".join(sheet.extract_text() for sheet in printed)


def test_a_picture_follows_the_scheme(visit: Open) -> None:
    inks = set()
    for scheme in ("light", "dark"):
        page = visit("reduction/", scheme=scheme).page
        text = "figure svg.drawn text[fill='var(--ink)']"
        assert contrast(style(page, text, "fill"), background(page, "figure svg.drawn")) >= 7
        inks.add(style(page, text, "fill"))
    assert len(inks) == 2
