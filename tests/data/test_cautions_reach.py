"""Cautions by composition reach what is printed: each sheet of the chart, each pack."""

from __future__ import annotations

import pytest

from temperbook.derive.cautions import metals_of
from temperbook.derive.handbook import Handbook
from temperbook.drawing.anneal_foot import Foot, on_sheet
from temperbook.drawing.paper import LETTERING
from temperbook.drawing.shapes import Text
from temperbook.outputs.paper import chart_sheets
from temperbook.records.models import Alloy
from temperbook.views import anneal_chart, caution, pack

# An alloy for each caution by composition of the work on the chart.
BROUGHT = [
    ("copper/cartridge-brass", "zinc-fume"),
    ("gold/18ct-nickel-white", "nickel-skin"),
    ("titanium-niobium/titanium-grade-2", "titanium-fire"),
]


def brought_by(alloy: Alloy, handbook: Handbook) -> set[str]:
    tasks = set(handbook.library.charts["anneal"].tasks)
    return {
        c.id
        for c in handbook.cautions_of[alloy.id]
        if not c.applies.always and set(c.tasks) & tasks
    }


@pytest.mark.parametrize(("alloy", "caution_id"), BROUGHT)
def test_chart_of_one_alloy_says_the_caution_that_comes_with_it(
    handbook: Handbook, alloy: str, caution_id: str
) -> None:
    chart, library = handbook.library.charts["anneal"], handbook.library
    with_it = anneal_chart.shown(chart, [library.alloys[alloy]], handbook)
    quick = library.cautions[caution_id].quick
    assert quick in {c.quick for c in with_it.cautions}
    without = anneal_chart.shown(chart, [library.alloys["silver/fine-999"]], handbook)
    assert quick not in {c.quick for c in without.cautions}


def test_each_sheet_says_what_its_own_alloys_bring(handbook: Handbook) -> None:
    library = handbook.library
    chart = library.charts["anneal"]
    alloys = list(library.alloys.values())
    said = anneal_chart.shown(chart, alloys, handbook)
    everywhere = {library.cautions[i].quick for i in chart.cautions}
    rows = [row for group in said.groups for row in group.rows]
    assert {row.alloy for row in rows} == set(library.alloys)
    for row in rows:
        brought = {
            library.cautions[i].quick for i in brought_by(library.alloys[row.alloy], handbook)
        }
        assert {c.quick for c in on_sheet(said, [row])} == everywhere | brought, row.alloy
    kinds = {i for a in alloys for i in brought_by(a, handbook)}
    assert {"zinc-fume", "nickel-skin", "lead", "arsenic", "titanium-fire"} <= kinds


def test_the_cautions_stand_on_the_paper(handbook: Handbook) -> None:
    sheets = chart_sheets(
        handbook, "anneal", "a3", "wall", [handbook.library.alloys[a] for a, _ in BROUGHT]
    )
    printed = " ".join(
        shape.text for sheet in sheets for shape in sheet.shapes if isinstance(shape, Text)
    )
    for _, caution_id in BROUGHT:
        assert handbook.library.cautions[caution_id].quick.rstrip(".") in printed, caution_id


def test_more_cautions_make_a_higher_foot(handbook: Handbook) -> None:
    """The rows of a sheet get what its own foot leaves, not what the whole chart's would."""
    said = anneal_chart.shown(
        handbook.library.charts["anneal"], list(handbook.library.alloys.values()), handbook
    )
    rows = [row for group in said.groups for row in group.rows]
    silver = [row for row in rows if row.alloy == "silver/fine-999"]
    letters = LETTERING["bench"]
    assert Foot(said, rows, letters, 297).height > Foot(said, silver, letters, 297).height


def test_a_pack_carries_what_its_metals_bring(handbook: Handbook) -> None:
    for record in handbook.library.packs.values():
        metals = metals_of(record, handbook.library)
        assert metals, record.id
        brought = {c.id for metal in metals for c in handbook.cautions_of[metal.id]}
        carried = {c.id for c in handbook.cautions_in(record)}
        assert carried == brought | set(record.cautions), record.id
        names = {c.head.name for c in pack.shown(record, handbook).cautions}
        assert names == {handbook.library.cautions[i].name for i in carried}


def test_first_week_speaks_of_zinc_free_and_nickel_bearing_metal(handbook: Handbook) -> None:
    """Its chapters call figures of sterling and of 18 ct nickel white, link to copper, and its
    exercises weigh sterling."""
    record = handbook.library.packs["first-week"]
    metals = {metal.id for metal in metals_of(record, handbook.library)}
    assert {"silver/sterling-925", "gold/18ct-nickel-white", "copper/tough-pitch"} <= metals
    assert {"nickel-fume", "silver-salts"} <= {c.id for c in handbook.cautions_in(record)}


def test_a_caution_lists_the_charts_and_packs_that_carry_it(handbook: Handbook) -> None:
    shown = caution.shown(handbook.library.cautions["nickel-fume"], handbook)
    assert [link.text for link in shown.packs] == ["First week at the bench"]
    titanium = caution.shown(handbook.library.cautions["titanium-fire"], handbook)
    assert [link.text for link in titanium.charts] == ["Anneal"]
