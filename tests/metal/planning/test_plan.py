"""The working plan: as few anneals as the limits allow, and refusals that say what would do."""

import math
from dataclasses import replace
from itertools import pairwise

import pytest

from temperbook.metal import sections
from temperbook.metal.planning import plan
from temperbook.metal.planning.asked import Impossible, Request
from tests.metal.planning.made_up import BENCH, alloy, hardness, percent


def made(start, end, facts=None, bench=BENCH, **asked):
    request = Request(sections.parse(start), sections.parse(end), **asked)
    return plan.make(request, facts or alloy(reduction_ceiling=[percent(50)]), bench)


def refused(start, end, facts=None, bench=BENCH, **asked):
    with pytest.raises(Impossible) as error:
        made(start, end, facts, bench, **asked)
    return error.value


def ids(found):
    return [one.id for one in found]


def test_brass_rod_is_annealed_at_5_76_mm_before_its_last_draw():
    """Callister, design example on cold working brass: 6.4 to 5.1 mm with a last run of
    21.5 percent of the area needs 5.1/sqrt(1 - 0.215) = 5.76 mm before the anneal; the same example
    prints that one draw would take 36.5 percent."""
    found = made("round 6.4", "round 5.1", last=0.215)

    assert [run.then for run in found.runs] == ["anneal", "end"]
    assert found.runs[0].end.thickness == pytest.approx(5.76, abs=0.005)
    assert found.anneals == 1
    taken = 100 * (1 - math.exp(-found.strain))
    assert taken == pytest.approx(36.5, abs=0.05)


def test_dust_costs_no_anneal():
    """From the issue: 1.0 to 0.35 mm is two runs of exactly 65 percent, without reserve."""
    found = made("round 1.0", "round 0.35", ceiling=0.65)

    assert len(found.runs) == 2
    assert found.anneals == 1
    assert [100 * (1 - math.exp(-run.strain)) for run in found.runs] == pytest.approx([65, 65])
    assert ids(found.warnings).count("no-reserve") == 2


def test_a_square_ingot_of_6_mm_needs_one_anneal_to_a_ring_billet():
    """Common practice, no source: from a 5-6 mm square ingot to a
    ring billet one anneal, in ductile alloys; the billet here is 3.1 mm square, and one run takes
    the common 50 percent of the area at most."""
    assert made("square 6", "square 3.1").anneals == 1
    assert made("square 5", "square 2.6").anneals == 1
    assert made("square 6", "square 4.5").anneals == 0


def test_wire_of_1_mm_reaches_0_4_without_an_anneal_where_the_percent_is_the_diameters():
    """Common practice, no source: 1.0 to 0.4 mm without an anneal is 60 percent of the
    diameter and 84 of the area: under a limit of 60 percent of the area it takes two anneals."""
    on_diameter = alloy(reduction_ceiling=[percent(60, of="diameter")])
    on_area = alloy(reduction_ceiling=[percent(60, of="area")])

    assert made("round 1.0", "round 0.4", on_diameter).anneals == 0
    assert made("round 1.0", "round 0.4", on_area).anneals == 1


def test_a_basis_that_is_not_stated_is_read_as_the_area_of_a_wire():
    """Common practice, basis not stated: the reading that allows least work."""
    facts = alloy(reduction_ceiling=[percent(50, of="not-stated", how="practice")])

    found = made("round 2", "round 1.0", facts)

    assert found.anneals == 1
    assert found.runs[0].ceiling.area == pytest.approx(50)
    assert {"later-basis-not-stated", "later-limit-is-practice"} <= set(ids(found.notes))


def test_the_first_run_from_cast_has_its_own_limits():
    facts = alloy(reduction_ceiling=[percent(30, stage="cast"), percent(60)])

    found = made("square 6", "square 2", facts, state="cast")

    assert found.runs[0].ceiling.area == pytest.approx(30)
    assert found.runs[0].strain <= -math.log(0.7)
    assert len({round(run.strain, 9) for run in found.runs[1:]}) == 1


def test_without_a_limit_from_cast_the_later_one_serves_and_it_is_said():
    found = made("square 6", "square 5", state="cast")

    assert found.runs[0].ceiling.area == pytest.approx(50)
    assert "no-cast-limit" in ids(found.warnings)


def test_an_alloy_without_any_limit_takes_the_benchs_and_says_so():
    found = made("square 6", "square 5", alloy())

    assert found.runs[0].ceiling.how == "practice"
    assert "no-limit" in ids(found.warnings)


def test_a_limit_of_another_working_is_taken_with_a_warning():
    facts = alloy(reduction_ceiling=[percent(40, of="thickness", process="rolling", form="sheet")])

    found = made("round 2", "round 1.8", facts)

    assert found.runs[0].ceiling.area == pytest.approx(40)
    assert "limit-of-other-working" in ids(found.warnings)


def test_a_limit_for_the_very_working_goes_before_a_general_one_of_the_same_kind():
    facts = alloy(
        reduction_ceiling=[
            percent(50, of="not-stated", how="practice"),
            percent(84, of="area", process="drawing", form="wire", how="practice"),
        ]
    )

    assert made("round 1.0", "round 0.4", facts).anneals == 0
    assert made("flat 20x1", "flat 20x0.4", facts).anneals == 1


TEMPERED = {
    "temper_reduction": [
        replace(percent(21, of="thickness", form="sheet"), state="half-hard"),
        replace(percent(37, of="thickness", form="sheet"), state="hard"),
    ],
    "hardness": [
        hardness(60, state="annealed", form=""),
        hardness(90, 21),
        hardness(110, 37),
    ],
}


def test_the_last_run_gives_the_temper_of_the_alloys_own_table():
    facts = alloy(reduction_ceiling=[percent(50)], **TEMPERED)

    found = made("flat 30x2", "flat 30x0.8", facts, temper="half-hard")

    last = found.runs[-1]
    assert 1 - last.end.thickness / last.start.thickness == pytest.approx(0.21)
    assert (last.hardness.low, last.hardness.high) == pytest.approx((90, 100))
    assert last.then == "end"
    assert found.runs[-2].then == "anneal"


def test_soft_closes_with_an_anneal():
    found = made("flat 30x2", "flat 30x0.8", temper="soft")

    assert [run.then for run in found.runs] == ["anneal"] * len(found.runs)
    assert found.anneals == len(found.runs)


def test_hardness_between_points_is_interpolated_and_never_beyond_them():
    facts = alloy(reduction_ceiling=[percent(90)], **TEMPERED)

    within = made("flat 30x1", "flat 30x0.7", facts).runs[0]
    beyond = made("flat 30x1", "flat 30x0.5", facts).runs[0]

    share = (-math.log(0.7) + math.log(0.79)) / (-math.log(0.63) + math.log(0.79))
    assert within.hardness.low == pytest.approx(90 + 20 * share)
    assert beyond.hardness is None
    assert beyond.hardness_why == "beyond-table"


def test_from_cast_the_hardness_is_not_known():
    facts = alloy(reduction_ceiling=[percent(50)], **TEMPERED)

    found = made("flat 30x2", "flat 30x1.5", facts, state="cast")

    assert (found.runs[0].hardness, found.runs[0].hardness_why) == (None, "from-cast")


def test_wire_is_annealed_last_at_1_mm_where_the_ceiling_allows():
    found = made("round 2", "round 0.48", ceiling=0.8)

    assert found.anneals == 1
    assert found.runs[0].end.thickness == pytest.approx(1.0)
    assert "fine-wire-anneal" not in ids(found.warnings)


def test_wire_that_must_be_annealed_thin_is_warned_of():
    found = made("round 1.0", "round 0.35", ceiling=0.65)

    assert "fine-wire-anneal" in ids(found.warnings)


def test_a_run_under_its_floor_is_marked_and_the_nearest_sizes_are_named():
    facts = alloy(
        reduction_ceiling=[percent(60, of="thickness")],
        reduction_floor=[percent(40, of="thickness")],
    )

    found = made("flat 30x3", "flat 30x1.6", facts, temper="soft", ceiling=0.45)

    assert found.runs[0].under_floor
    assert "under-floor" in ids(found.warnings)
    nearest = next(said.values for said in found.warnings if said.id == "nearest-sizes")
    again = made(nearest["start"], "flat 30x1.6", facts, temper="soft", ceiling=0.45001)
    assert "under-floor" not in ids(again.warnings)


def test_a_floor_over_the_ceiling_is_said_and_the_ceiling_kept():
    found = made("flat 30x3", "flat 30x1", ceiling=0.5, floor=0.6)

    assert "floor-over-ceiling" in ids(found.warnings)
    assert all(run.strain <= run.ceiling.strain + 1e-9 for run in found.runs)


def test_more_anneals_make_smaller_runs_and_a_softer_end():
    facts = alloy(reduction_ceiling=[percent(50)], **TEMPERED)
    plain = made("flat 30x2", "flat 30x0.9", facts)
    more = made("flat 30x2", "flat 30x0.9", facts, more=2)

    assert more.anneals == plain.anneals + 2
    assert more.runs[-1].strain < plain.runs[-1].strain
    assert more.runs[-1].hardness.high < plain.runs[-1].hardness.high
    assert "more-anneals" in ids(more.notes)


def test_mass_and_charge_follow_from_the_length():
    """m = rho A l; the charge then allows for 10 percent cropped and 5 scalped: arithmetic."""
    found = made("flat 30x2", "flat 30x1.5", length=100)

    assert found.mass == pytest.approx(45)
    assert found.charge == pytest.approx(45 / 0.9 / 0.95)
    assert found.parts == pytest.approx({"Ag": found.charge * 0.9, "Cu": found.charge * 0.1})


def test_a_narrow_bar_is_expected_to_spread_and_a_wide_one_hardly():
    narrow = made("square 6", "flat 7x2")
    wide = made("flat 60x2", "flat 60x1.2")

    assert 6.5 < narrow.width < 12
    assert 60 < wide.width < 60.1
    assert "width-estimated" in ids(narrow.notes)


def test_without_a_spread_formula_the_width_is_taken_as_constant():
    found = made("flat 20x2", "flat 20x1", bench=replace(BENCH, rule=None))

    assert found.width is None
    assert "width-constant" in ids(found.notes)


def test_passes_keep_to_the_limit_of_a_pass_and_to_the_bite():
    """Groover, Eq. 18.8: the greatest draft is mu^2 R, 0.2^2 x 30 mm = 1.2 mm here."""
    tight = replace(BENCH, equipment=replace(BENCH.equipment, friction=0.1))
    found = made("flat 60x6", "flat 60x3", bench=tight).runs[0]
    sizes = [found.start.thickness, *(one.section.thickness for one in found.passes)]
    drafts = [a - b for a, b in pairwise(sizes)]

    assert max(drafts) <= 0.3 + 1e-9
    assert sizes[-1] == pytest.approx(3)
    assert all(1 - b / a <= 0.15 + 1e-9 for a, b in pairwise(sizes))


def test_holes_of_a_plate_are_used_and_runs_end_in_them():
    plate = (2.0, 1.8, 1.62, 1.46, 1.31, 1.18, 1.06, 0.95, 0.86, 0.77, 0.70)
    bench = replace(BENCH, equipment=replace(BENCH.equipment, holes=plate))

    found = made("round 2.0", "round 0.70", bench=bench, ceiling=0.7)

    assert found.anneals == 1
    ends = [run.end.thickness for run in found.runs]
    assert set(ends) <= set(plate)
    for run in found.runs:
        assert {one.section.thickness for one in run.passes} <= set(plate)
        assert run.strain <= run.ceiling.strain + 1e-9


def test_refusals_say_what_would_do():
    facts = alloy(reduction_ceiling=[percent(50)], **TEMPERED)

    assert refused("round 1", "round 2").said.id == "end-larger"
    assert refused("flat 20x6", "flat 40x3").said.id == "end-too-wide"
    assert refused("flat 20x6", "round 3").said.id == "strip-first"
    assert refused("flat 20x6", "flat 10x6").said.id == "cut-to-width"
    assert refused("flat 30x2", "flat 30x1", last=0.6).said.id == "last-over-ceiling"
    thin = refused("flat 30x1", "flat 30x0.9", facts, temper="hard")
    assert thin.said.id == "too-thin-for-temper"
    assert thin.said.values["start"] == "flat 30.0x1.429"  # 0.9/(1 - 0.37): arithmetic
    assert "1.429" in str(thin)
    cast = refused("flat 30x1.0", "flat 30x0.79", facts, temper="half-hard", state="cast")
    assert cast.said.id == "temper-from-cast"
    assert refused("round 2", "round 1", facts, temper="hard").said.id == "no-temper-table"
    assert (
        refused("flat 30x2", "flat 30x1", facts, temper="spring").said.id == "temper-not-in-table"
    )
    assert refused("flat 30x2", "flat 30x1", facts, temper="bouncy").said.id == "unknown-temper"


def test_alloys_that_are_not_worked_cold_or_not_melted_are_refused():
    bell = replace(alloy(), cold=False)
    bought = replace(alloy(), melt="buy-stock")

    assert refused("square 6", "square 5", bell).said.id == "not-worked-cold"
    assert refused("square 6", "square 5", bought, state="cast").said.id == "not-melted"
    assert made("square 6", "square 5", bought, length=10).charge is None


def test_a_plate_that_lacks_the_size_or_leaves_a_gap_is_refused():
    def with_holes(*holes):
        return replace(BENCH, equipment=replace(BENCH.equipment, holes=holes))

    assert refused("round 2", "round 1", bench=with_holes(1.8, 1.5)).said.id == "no-such-hole"
    assert refused("round 2", "round 1", bench=with_holes(1.8, 1.0)).said.id == "gap-in-plate"


def test_a_hardness_that_is_asked_for_comes_from_the_table_and_not_from_beyond_it():
    facts = alloy(reduction_ceiling=[percent(50)], **TEMPERED)

    found = made("flat 30x2", "flat 30x0.8", facts, temper="100hv")

    last = found.runs[-1].hardness
    assert (last.low + last.high) / 2 == pytest.approx(100)
    beyond = refused("flat 30x2", "flat 30x0.8", facts, temper="300")
    assert beyond.said.id == "hardness-not-in-table"
    assert beyond.said.values["hard"] == pytest.approx(115)
    assert refused("flat 30x2", "flat 30x1", facts, temper="90-hb").said.id == "no-hardness-table"
    assert refused("round 2", "round 1", facts, temper="90hv").said.id == "no-hardness-table"


def test_a_square_is_drawn_through_holes_as_the_round_of_its_area():
    plate = (2.0, 1.8, 1.62, 1.46, 1.31, 1.18, 1.06)
    bench = replace(BENCH, equipment=replace(BENCH.equipment, holes=plate))

    found = made("square 1.9", "round 1.06", bench=bench, ceiling=0.8)

    sizes = [one.section.thickness for run in found.runs for one in run.passes]
    assert sizes == list(plate[: len(sizes)])
    assert found.runs[0].start.text == "square 1.9"


def test_passes_that_leave_the_middle_behind_are_told():
    """The published criterion for split ends, h0/R > 1.81 e/(1 - e): at 5 mm on rolls of 60 mm it
    is met by passes below 8.4 percent, arithmetic; passes of 15 percent at 2 mm are firm enough."""
    mill = replace(BENCH.equipment, friction=0.1)
    thick = replace(BENCH, equipment=mill, split_ends=1.81)

    light = made("flat 60x5", "flat 60x4", bench=thick)
    firm = made("flat 60x2", "flat 60x1.5", bench=thick)

    assert "middle-behind" in ids(light.notes)
    assert "middle-behind" not in ids(firm.notes)


def test_light_draws_through_a_hole_are_told():
    """Delta of 10 percent at 6 degrees is 3.99 in a wire-die maker's chart; the limit of 3 is from
    memory and says so."""
    gentle = replace(BENCH.equipment, per_pass={**BENCH.equipment.per_pass, "draw": 0.1})
    found = made("round 2", "round 1.9", bench=replace(BENCH, equipment=gentle, delta=3.0))
    usual = made("round 2", "round 1.8", bench=replace(BENCH, delta=3.0))

    assert "light-draws" in ids(found.notes)
    assert "light-draws" not in ids(usual.notes)
