"""Reduction: no percentage without its basis."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from temperbook.metal import reduction, register
from temperbook.metal.sections import parse

SHARES = st.floats(0, 0.999)
SIZES = st.floats(0.01, 500)


def computed(**inputs: object) -> dict[str, float]:
    """The register's reduction between two sections [percent]."""
    return register.compute("reduction", {k.rstrip("_"): v for k, v in inputs.items()}).outputs


# -- the basis


def test_sixty_percent_of_the_diameter_is_84_percent_of_the_metal() -> None:
    """The handbook's first lesson. Source: geometry, 1 - 0.4 squared."""
    assert reduction.area_from_linear(0.6) == pytest.approx(0.84, abs=1e-12)
    on_wire = reduction.on_each_basis(0.6, "diameter", "round")
    assert on_wire == pytest.approx({"diameter": 0.6, "area": 0.84})


def test_one_to_035_mm() -> None:
    """Common practice, no source: 1.0 mm wire to 0.3-0.4 mm without an anneal.

    On the diameter that is 60 to 70 percent, on the area 84 to 91. The arithmetic is geometry; that
    a bench does it is practice.
    """
    for finish, diameter, area in ((0.4, 60, 84), (0.35, 65, 87.75), (0.3, 70, 91)):
        found = computed(from_="round 1.0", to=f"round {finish}")
        assert found["diameter"] == pytest.approx(diameter, abs=1e-9)
        assert found["area"] == pytest.approx(area, abs=1e-9)


def test_thirty_percent_of_fine_wire() -> None:
    """Common practice, no source: fine wire annealed after only some 30 percent pulls apart.

    The basis is not stated: 30 percent of the diameter is 51 percent of the area.
    """
    assert reduction.area_from_linear(0.3) == pytest.approx(0.51, abs=1e-12)
    assert reduction.linear_from_area(0.3) == pytest.approx(0.1633, abs=5e-5)


@pytest.mark.parametrize(
    ("stock", "of", "fraction", "each"),
    [
        ("round", "area", 0.75, {"area": 0.75, "diameter": 0.5}),
        ("square", "thickness", 0.5, {"area": 0.75, "thickness": 0.5}),
        ("wide", "thickness", 0.5, {"area": 0.5, "thickness": 0.5}),
        ("wide", "area", 0.3, {"area": 0.3, "thickness": 0.3}),
        ("round", "diameter", 0.0, {"area": 0.0, "diameter": 0.0}),
    ],
)
def test_on_each_basis(stock: str, of: str, fraction: float, each: dict[str, float]) -> None:
    """Round and square lose in two directions, wide sheet in one. Source: geometry."""
    assert reduction.on_each_basis(fraction, of, stock) == pytest.approx(each)  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("of", "stock", "said"),
    [
        ("diameter", "wide", "wide stock has no diameter"),
        ("diameter", "square", "square stock has no diameter"),
        ("thickness", "round", "round stock has no thickness"),
        ("width", "wide", "wide stock has no width"),
        ("area", "oval", "`oval` is no stock"),
    ],
)
def test_a_basis_that_the_stock_does_not_have(of: str, stock: str, said: str) -> None:
    with pytest.raises(ValueError, match=said):
        reduction.on_each_basis(0.5, of, stock)  # type: ignore[arg-type]


@pytest.mark.parametrize("fraction", [-0.01, 1, 1.5, math.nan, math.inf])
def test_what_is_no_reduction(fraction: float) -> None:
    for function in (reduction.area_from_linear, reduction.linear_from_area):
        with pytest.raises(ValueError, match="between 0 and 100 percent"):
            function(fraction)
    with pytest.raises(ValueError, match="between 0 and 100 percent"):
        reduction.on_each_basis(fraction, "area", "round")


@given(SHARES)
def test_from_one_basis_to_the_other_and_back(fraction: float) -> None:
    there = reduction.area_from_linear(fraction)
    assert reduction.linear_from_area(there) == pytest.approx(fraction, abs=1e-9)
    assert there >= fraction - 1e-12  # the area never falls less than the diameter


@given(st.tuples(SHARES, SHARES))
def test_more_on_one_basis_is_more_on_the_other(pair: tuple[float, float]) -> None:
    low, high = sorted(pair)
    assert reduction.area_from_linear(low) <= reduction.area_from_linear(high)


# -- between two sizes


@pytest.mark.parametrize(("before", "after"), [(0, 1), (1, 0), (-1, 1), (1, -1)])
def test_sizes_above_zero(before: float, after: float) -> None:
    with pytest.raises(ValueError, match="above zero"):
        reduction.reduction(before, after)


@pytest.mark.parametrize(
    ("before", "after", "area"), [("6.4", "5.1", 36.5), ("15.2", "12.2", 35.6), ("0.4", "0.2", 75)]
)
def test_published_drawing_examples(before: str, after: str, area: float) -> None:
    """Cold work on the area of drawn rod and wire.

    Sources: W. D. Callister, design example on cold-working brass, 6.4 to 5.1 mm, 36.5 %; the same
    book's copper rod, 15.2 to 12.2 mm, 35.6 %; FOSSEE IIT Bombay, textbook companion, example 8.5,
    copper wire, 0.40 to 0.20 in, 75 %.
    """
    found = computed(from_=f"round {before}", to=f"round {after}")
    assert found["area"] == pytest.approx(area, abs=0.05)


def test_published_true_strains() -> None:
    """Sources:

    M. P. Groover, Fundamentals of Modern Manufacturing, example 18.1 (strip of 300 mm, 25 to 22 mm:
    0.128) and example 18.4 (wire, 2.5 to 2.0 mm: 0.446).
    """
    assert computed(from_="flat 300x25", to="flat 300x22")["true-strain"] == pytest.approx(
        0.128, abs=5e-4
    )
    assert computed(from_="round 2.5", to="round 2.0")["true-strain"] == pytest.approx(
        0.446, abs=5e-4
    )


@pytest.mark.parametrize(
    ("numbers", "percent"),
    [(1, 10.9), (2, 20.7), (3, 29.4), (4, 37.1), (6, 50.0), (8, 60.5), (10, 68.7)],
)
def test_temper_steps_of_the_gauge(numbers: int, percent: float) -> None:
    """Tempers of copper-base strip, in numbers of the Brown and Sharpe gauge, of the thickness.

    Source: Precision Steel Warehouse, Copper-base alloys: temper designations, table. The gauge's
    own law (39 steps from 0.460 to 0.005 inch, a ratio of 92) gives the same within rounding.
    """
    thickness = 92 ** (-numbers / 39)
    assert 100 * reduction.reduction(1, thickness) == pytest.approx(percent, abs=0.15)


def test_halving_the_area_doubles_the_length() -> None:
    """Source: conservation of volume."""
    found = computed(from_="square 6", to="flat 9x2")
    assert found["area"] == pytest.approx(50)
    assert found["length-ratio"] == pytest.approx(2)


# -- true strain


@given(SIZES, st.floats(0.01, 0.99), st.floats(0.01, 0.99))
def test_runs_add_up_in_true_strain_and_not_in_percent(
    size: float, first: float, second: float
) -> None:
    start, middle = size, size * first
    end = middle * second
    wire = [parse(f"round {value:.12f}") for value in (start, middle, end)]
    whole = reduction.true_strain(wire[0], wire[2])
    parts = reduction.true_strain(wire[0], wire[1]) + reduction.true_strain(wire[1], wire[2])
    assert whole == pytest.approx(parts, rel=1e-6)
    assert reduction.reduction(start, end) < reduction.reduction(
        start, middle
    ) + reduction.reduction(middle, end)


def test_a_bar_that_spreads_counts_its_thickness() -> None:
    """A square of 6 mm rolled to 9 x 4 mm keeps its area; the thickness was squeezed all the same.

    Source: convention of the page Reduction (design, section 3).
    """
    before, after = parse("square 6"), parse("flat 9x4")
    assert before.area == after.area
    assert reduction.true_strain(before, after) == pytest.approx(math.log(1.5))


def test_wide_sheet_counts_the_same_on_both() -> None:
    before, after = parse("flat 20x3"), parse("flat 20x1.5")
    assert reduction.true_strain(before, after) == pytest.approx(math.log(2))


@given(SHARES)
def test_strain_and_area_say_the_same_for_wire(fraction: float) -> None:
    """e = -ln(1 - r_area). Source: definition."""
    start = 10.0
    end = start * math.sqrt(1 - fraction)
    strain = reduction.true_strain(parse(f"round {start}"), parse(f"round {end:.12f}"))
    assert strain == pytest.approx(-math.log(1 - fraction), abs=1e-6)


# -- the register


@pytest.mark.parametrize(
    ("before", "after", "outputs"),
    [
        ("round 2", "round 1", {"area", "diameter", "true-strain", "length-ratio"}),
        ("flat 20x3", "flat 20x2", {"area", "thickness", "true-strain", "length-ratio"}),
        ("round 4", "flat 4x2", {"area", "true-strain", "length-ratio"}),
    ],
)
def test_only_the_bases_that_both_sections_have(before: str, after: str, outputs: set[str]) -> None:
    """A round that becomes a flat has lost neither a diameter nor a thickness of its own."""
    assert computed(from_=before, to=after).keys() == outputs


@pytest.mark.parametrize(
    ("formula", "inputs", "said"),
    [
        ("reduction", {"from": "round 1", "to": "round 2"}, "is larger than"),
        ("reduction", {"from": "round 1"}, "missing: to"),
        ("reduction", {"from": "round 1", "to": 0.5}, "`0.5` is no section"),
        ("reduction", {"from": "round 1", "to": "round 0.5", "of": "area"}, "unknown: of"),
        ("rolled-length", {"from": "round 1", "to": "round 2", "length": 5}, "is larger than"),
        (
            "reduction-basis",
            {"value": "sixty", "of": "area", "section": "round"},
            "value is a plain number",
        ),
        ("reduction-basis", {"value": 100, "of": "area", "section": "round"}, "between 0 and 100"),
        (
            "reduction-basis",
            {"value": 50, "of": "area", "section": "hexagon"},
            "section is round, square or wide, not `hexagon`",
        ),
        ("mass", {"density": 10, "section": "square 6", "length": -1}, "above zero"),
        (
            "mass",
            {"density": [], "section": "square 6", "length": 1},
            "density is a plain finite number",
        ),
        ("fineness", {"carat": 25}, "at most at 24"),
    ],
)
def test_inputs_that_do_not_fit(formula: str, inputs: dict[str, object], said: str) -> None:
    with pytest.raises(ValueError, match=said):
        register.compute(formula, inputs, {"alloys": {}, "finenesses": []})


def test_an_unknown_formula() -> None:
    with pytest.raises(KeyError):
        register.compute("spring", {})
