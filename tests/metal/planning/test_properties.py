"""What holds for every plan, whatever is asked: found by hypothesis."""

import math
from dataclasses import replace
from itertools import pairwise

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from temperbook.metal import sections
from temperbook.metal.planning import path, plan
from temperbook.metal.planning.asked import Impossible, Request
from tests.metal.planning.made_up import BENCH, alloy, percent

SIZES = st.floats(0.2, 12).map(lambda size: round(size, 3))
SHARES = st.floats(0.2, 0.85)


@st.composite
def requests(draw):
    shape = draw(st.sampled_from(["round", "square", "flat", "flattened"]))
    large, small = sorted((draw(SIZES), draw(SIZES)), reverse=True)
    assume(large > small * 1.02)
    if shape == "flat":
        width = round(large * draw(st.floats(1, 12)), 3)
        texts = f"flat {width}x{large}", f"flat {width}x{small}"
    elif shape == "flattened":
        texts = f"square {large}", f"flat {large}x{small}"
    else:
        texts = f"{shape} {large}", f"{shape} {small}"
    start, end = map(sections.parse, texts)
    first = draw(SHARES) if draw(st.booleans()) else None
    return Request(
        start,
        end,
        ceiling=draw(SHARES),
        first_ceiling=first,
        state=draw(st.sampled_from(["cast", "annealed"])),
        temper=draw(st.sampled_from(["", "soft"])),
        floor=draw(st.one_of(st.none(), st.floats(0.05, 0.6))),
    )


def planned(request):
    return plan.make(request, alloy(reduction_ceiling=[percent(50)]), BENCH)


@given(requests())
@settings(max_examples=150, deadline=None)
def test_no_run_passes_its_ceiling_and_the_work_adds_up(request):
    made = planned(request)

    assert all(run.strain <= run.ceiling.strain + 1e-9 for run in made.runs)
    assert math.isclose(sum(run.strain for run in made.runs), made.strain, rel_tol=1e-9)
    assert math.isclose(made.strain, path.work(request.start, request.end), rel_tol=1e-9)


@given(requests())
@settings(max_examples=150, deadline=None)
def test_one_anneal_fewer_would_pass_a_ceiling(request):
    made = planned(request)

    fewer = [run.ceiling.strain for run in made.runs][: len(made.runs) - 1]
    assert sum(fewer) < made.strain


@given(requests())
@settings(max_examples=100, deadline=None)
def test_runs_and_passes_join_and_keep_the_volume(request):
    made = planned(request)

    section = request.start
    for run in made.runs:
        assert run.start == section
        sizes = [run.start, *(one.section for one in run.passes)]
        assert sizes[-1] == run.end
        lengths = [run.start.area / size.area for size in sizes]
        assert all(
            math.isclose(size.area * length, run.start.area)
            for size, length in zip(sizes, lengths, strict=True)
        )
        thinner = [size.thickness for size in sizes]
        assert thinner == sorted(thinner, reverse=True)
        section = run.end
    assert section == request.end


@given(requests())
@settings(max_examples=100, deadline=None)
def test_a_floor_that_is_not_kept_is_always_said(request):
    made = planned(request)

    under = any(run.under_floor for run in made.runs)
    assert under == ("under-floor" in {said.id for said in made.warnings})


@given(requests(), st.integers(1, 3))
@settings(max_examples=60, deadline=None)
def test_more_anneals_are_exactly_more(request, more):
    plain = planned(request)
    again = planned(replace(request, more=more))

    assert again.anneals == plain.anneals + more


@given(st.integers(2, 9), st.floats(0.3, 0.8))
@settings(max_examples=60, deadline=None)
def test_turned_blows_add_up(steps, share):
    """Work of a bar forged down in steps is the same as in one: nothing cancels."""
    start, end = sections.parse("square 12"), sections.parse(f"square {12 * share:.4f}")
    way = [path.at(start, end, step / steps) for step in range(steps + 1)]

    added = sum(path.work(a, b) for a, b in pairwise(way))

    assert math.isclose(added, path.work(start, end), rel_tol=1e-9)


@given(SIZES, SIZES)
@settings(max_examples=60, deadline=None)
def test_an_end_that_is_larger_is_always_refused(one, other):
    small, large = sorted((one, other))
    assume(large > small * 1.001)
    request = Request(sections.parse(f"round {small}"), sections.parse(f"round {large}"))

    with pytest.raises(Impossible) as refused:
        planned(request)
    assert refused.value.said.id == "end-larger"
