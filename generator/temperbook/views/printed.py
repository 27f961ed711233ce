"""The pages of charts and packs: what each is for, what stands on it, how to print it."""

from __future__ import annotations

from dataclasses import dataclass, field

from temperbook.derive.handbook import Handbook
from temperbook.views import pages, routes
from temperbook.views.pages import CautionShown, Link, Page


@dataclass(frozen=True)
class PrintedShown:
    """What such a page says. brought: cautions that come with what is in its alloys."""

    title: str
    about: str
    command: str
    cautions: list[CautionShown]
    alloys: list[Link] = field(default_factory=list)
    contents: list[str] = field(default_factory=list)
    brought: list[CautionShown] = field(default_factory=list)


def all_pages(handbook: Handbook) -> list[Page]:
    """A page for each chart and each pack."""
    return [*_charts(handbook), *_packs(handbook)]


def _charts(handbook: Handbook) -> list[Page]:
    every = list(handbook.library.alloys.values())
    alloys = [Link(a.name, routes.page("alloys", i)) for i, a in handbook.library.alloys.items()]
    some = ",".join(list(handbook.library.alloys)[-2:])
    return [
        Page(
            routes.page("charts", chart_id),
            "chart",
            chart.title,
            PrintedShown(
                f"{chart.title}: {chart.lead.lower()}",
                chart.about,
                f"temperbook chart {chart_id} --paper a3 --alloys {some}",
                pages.cautions(chart.cautions, handbook),
                alloys=alloys,
                brought=[
                    pages.caution(c)
                    for c in handbook.cautions_on(chart, every)
                    if c.id not in chart.cautions
                ],
            ),
            chart.about,
        )
        for chart_id, chart in handbook.library.charts.items()
    ]


def _packs(handbook: Handbook) -> list[Page]:
    return [
        Page(
            routes.page("packs", pack_id),
            "pack",
            pack.title,
            PrintedShown(
                pack.title,
                f"{pack.subtitle}. {pack.for_}",
                f"temperbook pack {pack_id} --paper a4",
                [pages.caution(c) for c in handbook.cautions_in(pack)],
                contents=[handbook.library.prose[c].title for c in pack.chapters],
            ),
            pack.subtitle,
        )
        for pack_id, pack in handbook.library.packs.items()
    ]
