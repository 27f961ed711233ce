"""Fills a page kind's template. Everything that comes from data is escaped; pictures are our own
SVG."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from jinja2 import Environment, FileSystemLoader, StrictUndefined
from markupsafe import Markup

from temperbook.derive import limits
from temperbook.derive.handbook import Handbook
from temperbook.drawing import (
    curves,
    heat_strip,
    ladder,
    marks,
    picture_facts,
    pictures,
    route,
    signs,
)
from temperbook.outputs import svg
from temperbook.views import exported
from temperbook.views.comparing.plots import Ladder, Plot
from temperbook.views.pages import Page
from temperbook.views.route import RouteShown
from temperbook.views.terms import Terms

SIGN = 6.0  # mm
TEMPLATES = Path(__file__).parent / "templates"


class Renderer:
    """Turns pages into HTML with the templates beside this module."""

    def __init__(self, handbook: Handbook, papers: dict[str, list[Any]]) -> None:
        self.handbook, self.papers = handbook, papers
        self.drawn = 0
        self.environment = Environment(
            loader=FileSystemLoader(TEMPLATES),
            autoescape=True,
            undefined=StrictUndefined,
            trim_blocks=True,
            lstrip_blocks=True,
        )
        self.facts = picture_facts.of(handbook)
        self.terms = Terms(handbook.library.glossary)

    def body(self, page: Page) -> str:
        """The HTML of a page's text."""
        template = self.environment.get_template(f"{_template(page.kind)}.html")
        return template.render(
            page=page,
            says=page.says,
            rel=lambda href: relative(href, page.address),
            picture=self.picture,
            strip=self.strip,
            window=self.window,
            route=self.route,
            plot=self.plot,
            cooling_sign=self.cooling_sign,
            safety_sign=self.safety_sign,
            pieces=self.terms.page(),
            papers=self.papers.get(page.address, []),
            any_papers=bool(self.papers),
            tables=exported.OFFERED,
        )

    def picture(self, name: str, alt: str = "") -> Markup:
        """A drawn picture by name, as inline SVG; the prose's own alternative text where it has
        one."""
        self.drawn += 1
        drawn = pictures.draw(name, self.facts)
        return Markup(svg.picture(drawn, f"d{self.drawn}", alt or drawn.alt))

    def route(self, said: RouteShown) -> Markup:
        """A worked route, drawn, as inline SVG."""
        self.drawn += 1
        return Markup(svg.picture(route.draw(said, self.handbook.glow.colour), f"d{self.drawn}"))

    def plot(self, said: Plot) -> Markup:
        """A comparison, drawn, as inline SVG."""
        self.drawn += 1
        if isinstance(said, Ladder):
            drawn = ladder.draw(said, self.handbook.glow.colour)
        else:
            drawn = curves.draw(said)
        return Markup(svg.picture(drawn, f"d{self.drawn}"))

    def cooling_sign(self, rule: str) -> Markup:
        """The sign of a way of cooling, beside words that say the same."""
        return Markup(svg.sign(marks.cooling(rule, SIGN / 2, SIGN / 2, SIGN), SIGN))

    def safety_sign(self, name: str) -> Markup:
        """A sign of the open standards, drawn by the handbook."""
        self.drawn += 1
        return Markup(svg.picture(signs.SIGNS[name](), f"d{self.drawn}"))

    def strip(self, alloy_id: str) -> heat_strip.Strip:
        """The strip of glow of an alloy's own page, over the heats that matter to it."""
        return heat_strip.strip(*self._heats(alloy_id), self.handbook.glow.colour)

    def window(self, alloy_id: str) -> heat_strip.Strip:
        """The same on the one scale that all alloys of the index share."""
        return heat_strip.shared(*self._heats(alloy_id), self.handbook.glow.colour)

    def _heats(self, alloy_id: str) -> tuple[tuple[float, float] | None, float | None, float]:
        alloy = self.handbook.library.alloys[alloy_id]
        anneal, stop = limits.anneal(alloy), limits.stop(alloy)
        window = (limits.lowest(anneal), limits.highest(anneal)) if anneal else None
        melts = limits.lowest(stop[1]) if stop else None
        return window, melts, limits.eye_error(self.handbook)


def _template(kind: str) -> str:
    """A kind's own template; a section that is prose alone has none."""
    return kind if (TEMPLATES / f"{kind}.html").exists() else "section"


def relative(href: str, address: str) -> str:
    """A link from one page's address to another, both below the site's root; outside links stay."""
    if "://" in href or href.startswith("#"):
        return href
    target, hash_, anchor = href.partition("#")
    if target == address and hash_:
        return f"#{anchor}"
    up = "../" * address.count("/")
    return f"{up}{target}{hash_}{anchor}" or "./"
