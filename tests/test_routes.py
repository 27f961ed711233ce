"""Worked routes: what they plan, what their pages say of it, and that their commands do the same.

The limits are the alloys' own; the numbers of anneals are held against common practice of the bench
(no source), as it stands in `data/subjects/bench/reduction.yaml`.
"""

from __future__ import annotations

import json
import math
import shlex
from itertools import pairwise

import pytest
from click.testing import CliRunner

from temperbook import checks
from temperbook.checks import route_can_be_planned
from temperbook.cli import main
from temperbook.derive import route_plans
from temperbook.derive.handbook import Handbook, derive
from temperbook.metal.planning.plan import Plan
from temperbook.paths import Project, project
from temperbook.records.load import load
from temperbook.views import route as view
from temperbook.views import routes
from temperbook.views.route import RouteShown
from temperbook.views.route_words import gauges, length

ROUTES = sorted(path.stem for path in (project().data / "routes").glob("*.yaml"))


def plans(route_id: str, handbook: Handbook) -> list[Plan]:
    return route_plans.of_route(view.of(handbook)[route_id], handbook)


def page(route_id: str, handbook: Handbook) -> RouteShown:
    return view.shown(view.of(handbook)[route_id], handbook)


def test_the_five_routes_of_the_handbook_are_there() -> None:
    assert len(ROUTES) == 5


@pytest.mark.parametrize("route_id", ROUTES)
def test_no_run_passes_its_ceiling_and_one_anneal_fewer_would(
    route_id: str, handbook: Handbook
) -> None:
    for plan in plans(route_id, handbook):
        ceilings = [run.ceiling.strain for run in plan.runs if run.ceiling]
        assert len(ceilings) == len(plan.runs)
        assert all(r.strain <= c + 1e-9 for r, c in zip(plan.runs, ceilings, strict=True))
        closing = plan.runs[-1].strain if plan.temper else 0.0
        bound = ceilings[: len(ceilings) - bool(plan.temper)]
        assert plan.strain - closing > sum(bound[:-1]) + 1e-9, "a run could be spared"


@pytest.mark.parametrize("route_id", ROUTES)
def test_volume_is_kept_and_sizes_fall_pass_by_pass(route_id: str, handbook: Handbook) -> None:
    made = plans(route_id, handbook)
    for before, after in pairwise(made):
        assert before.runs[-1].end == after.runs[0].start
        assert before.mass == pytest.approx(after.mass)
        assert before.runs[-1].then == "anneal"
    for plan in made:
        sizes = [one.section.area for run in plan.runs for one in run.passes]
        assert sizes == sorted(sizes, reverse=True)
        assert sizes[-1] == pytest.approx(plan.request.end.area)


def test_ring_stock_needs_one_anneal_as_common_practice_has_it(handbook: Handbook) -> None:
    usual = handbook.figure("bench/reduction#anneals-to-ring@name=usual").figure.value
    (plan,) = plans("ring-stock-18ct", handbook)
    assert plan.anneals == usual == 1
    billet = handbook.figure("bench/reduction#billet").figure
    assert billet.low <= plan.request.start.thickness <= billet.high  # type: ignore[operator]


def test_copper_wire_is_not_annealed_below_a_millimetre(handbook: Handbook) -> None:
    grooves, drawn = plans("copper-wire", handbook)
    assert drawn.anneals == 0
    assert grooves.runs[-1].end.thickness >= 1.0
    # The limit is the cautious end of common practice: 1.0 mm to 0.4 mm, counted on the area.
    low = handbook.figure("bench/reduction#wire-from").figure.value
    high = handbook.figure("bench/reduction#wire-to").figure.high
    assert low
    assert high
    ceiling = drawn.runs[0].ceiling
    assert ceiling
    assert ceiling.percent == pytest.approx(100 * (1 - (high / low) ** 2))


def test_sterling_ends_half_hard_by_the_table_of_its_page(handbook: Handbook) -> None:
    (plan,) = plans("sterling-sheet", handbook)
    last = plan.runs[-1]
    table = handbook.figure("silver/sterling-925#temper-reduction@form=sheet,state=half-hard")
    gone = 100 * (1 - last.end.thickness / last.start.thickness)
    assert gone == pytest.approx(table.figure.value)
    hard = handbook.figure("silver/sterling-925#hardness@form=sheet,state=half-hard,reduction=21")
    assert last.hardness
    ends = (last.hardness.low, last.hardness.high)
    assert ends == pytest.approx(hard.figure.ends)


def test_the_white_billet_keeps_the_floor_and_ceilings_of_its_page(handbook: Handbook) -> None:
    (plan,) = plans("white-ring-billet", handbook)
    gone = [100 * (1 - run.end.thickness / run.start.thickness) for run in plan.runs]
    floor = handbook.figure(
        "gold/18ct-nickel-white#reduction-floor@of=thickness,form=sheet,stage=cast"
    ).figure.value
    ceilings = [
        handbook.figure(
            f"gold/18ct-nickel-white#reduction-ceiling@of=thickness,form=sheet,stage={stage}"
        ).figure.value
        for stage in ("cast", "annealed")
    ]
    assert floor <= gone[0] <= ceilings[0]  # type: ignore[operator]
    assert gone[1] <= ceilings[1]  # type: ignore[operator]
    shown = page("white-ring-billet", handbook)
    assert shown.anneal
    assert shown.anneal.rule == "air"
    assert {"nickel-skin", "nickel-fume"} <= {c.href.split("/")[1] for c in shown.cautions}


def test_nothing_is_invented_where_nothing_is_published(handbook: Handbook) -> None:
    anneal = page("shibuichi-sheet", handbook).anneal
    assert anneal
    assert anneal.low is None
    assert anneal.heat.text == "no published figure found"
    assert not anneal.heat.mark
    assert [part.mark for part in anneal.by_eye] == ["practice"]
    assert anneal.quench.mark == "practice"
    assert anneal.hold is None


@pytest.mark.parametrize("route_id", ROUTES)
def test_the_command_of_a_page_makes_the_same_plan(route_id: str, handbook: Handbook) -> None:
    said, made = page(route_id, handbook), plans(route_id, handbook)
    for stretch, plan in zip(said.stretches, made, strict=True):
        _, *words = shlex.split(stretch.command)
        result = CliRunner().invoke(main, [*words, "--json"])
        assert result.exit_code == 0, result.output
        told = json.loads(result.stdout)
        ends = [run["to"]["text"] for run in told["runs"]]
        assert ends == [run.end.text for run in plan.runs]
        assert told["anneals"] == plan.anneals
        for of_plan, run in zip(told["runs"], stretch.runs, strict=True):
            assert len(of_plan["passes"]) == len(run.passes)


@pytest.mark.parametrize("route_id", ROUTES)
def test_runs_are_numbered_through_and_said_on_each_basis(
    route_id: str, handbook: Handbook
) -> None:
    said = page(route_id, handbook)
    assert [run.number for run in said.runs] == list(range(1, len(said.runs) + 1))
    for run in said.runs:
        gone = 100 * (1 - run.end.area / run.start.area)
        assert f"{gone:.0f}\u00a0% of the area" in run.reductions
        if run.start.shape == run.end.shape:
            other = 100 * (1 - run.end.thickness / run.start.thickness)
            basis = {"flat": "thickness", "square": "side", "round": "diameter"}[run.end.shape]
            assert f"{other:.0f}\u00a0% of the {basis}" in run.reductions
        assert run.ceiling
        assert run.ceiling.mark
        assert run.passes[-1].since == run.reductions


@pytest.mark.parametrize("route_id", ROUTES)
def test_the_charge_is_the_piece_and_all_that_is_lost_on_the_way(
    route_id: str, handbook: Handbook
) -> None:
    plan = plans(route_id, handbook)[-1]
    settings = "bench/settings"
    kept = 1.0
    for quantity in ("trim-share", "crop-share", "scalp-share", "melt-loss"):
        share = handbook.figure(f"{settings}#{quantity}").figure.value
        assert share
        kept *= 1 - share / 100
    assert plan.charge == pytest.approx((plan.mass or 0) / kept, rel=0.01)
    assert sum(plan.parts.values()) == pytest.approx(plan.charge)
    said = page(route_id, handbook).amounts
    assert said
    assert said.charge == f"{plan.charge:.2f}\u00a0g"


@pytest.mark.parametrize("route_id", ROUTES)
def test_cautions_are_those_of_the_work(route_id: str, handbook: Handbook) -> None:
    said = page(route_id, handbook)
    named = {c.href.split("/")[1] for c in said.cautions}
    assert {"mill-nip", "molten-metal-water", "pickle-acid", "quench-steam"} <= named
    assert ("drawing-whip" in named) == (route_id == "copper-wire")


def test_an_alloy_leads_to_its_routes(handbook: Handbook) -> None:
    (link,) = view.of_alloy("silver/sterling-925", handbook)
    assert link.href == routes.page("routes", "sterling-sheet")
    assert view.of_alloy("silver/fine-999", handbook) == []
    assert len(view.listed(handbook)) == len(ROUTES)


def test_a_limit_of_a_route_is_shown_with_its_own_provenance(handbook: Handbook) -> None:
    said = page("copper-wire", handbook)
    first = said.stretches[0]
    assert [part.text for part in first.limits] == [
        "50\u00a0% of the area",
        "65\u00a0% of the area",
    ]
    for run in first.runs:
        assert run.ceiling
        assert run.ceiling.mark == "practice"
        assert run.ceiling.note.startswith("set for this route")
    assert [run.ceiling.text for run in first.runs if run.ceiling] == [
        "50\u00a0% of the area",
        "65\u00a0% of the area",
        "65\u00a0% of the area",
    ]


def test_the_small_route_by_hand(small: Project) -> None:
    """Square 4 to 2, 60 % at most from cast and 75 % after (strain 0.92, 1.39): two runs."""
    library, found = load(small)
    assert not found
    assert checks.run(library) == []
    handbook = derive(library)
    grooves, drawn = plans("loft-wire", handbook)
    assert grooves.strain == pytest.approx(2 * math.log(2))
    assert [run.strain for run in grooves.runs] == pytest.approx([math.log(2)] * 2)
    assert (grooves.anneals, drawn.anneals) == (2, 0)
    assert drawn.strain == pytest.approx(math.log(4 / (math.pi * 0.36)))
    said = page("loft-wire", handbook)
    assert [c.name for c in said.cautions] == ["Hot metal that looks cold", "Glare of the melt"]
    assert said.anneals == "2\u00a0anneals"


def test_a_route_without_settings_tells_what_is_lacking(small: Project) -> None:
    path = small.data / "subjects/bench/settings.yaml"
    text = path.read_text(encoding="utf-8")
    path.write_text(text.replace("crop-share", "trim-shade"), encoding="utf-8")
    library, _ = load(small)
    # A slip in the record itself is told there, and hides nothing behind a second problem.
    assert list(route_can_be_planned.check(library)) == []
    path.unlink()
    library, _ = load(small)
    told = {problem.text for problem in route_can_be_planned.check(library)}
    assert "has no crop-share" in told


def test_sizes_as_a_bench_says_them() -> None:
    assert length(53.24) == "53\u00a0mm"
    assert length(5000.0) == "5.00\u00a0m"
    assert length(None) == ""
    assert gauges({"awg": {"number": "20", "difference_mm": -0.012}}) == "AWG\u00a020\u00a0(−0.01)"
