"""Hardness and temper after cold work, from tables alone."""

from __future__ import annotations

import math
from typing import Any

import pytest

from temperbook.derive import computing
from temperbook.metal import register
from temperbook.metal.register.formula import Answer
from temperbook.records.load import Library

BLANK: dict[str, Any] = dict.fromkeys(
    ("name", "of", "process", "form", "state", "heat", "stage"), ""
) | {"how": "quoted", "sources": [], "reduction": None}


def figure(unit: str, value: float, **basis: Any) -> dict[str, Any]:
    """A figure as the tables hold it."""
    return {**BLANK, "low": value, "high": value, "unit": unit, **basis}


def made_up(**figures: list[dict[str, Any]]) -> dict[str, Any]:
    """A table of alloys that holds one invented alloy."""
    named = {key.replace("_", "-"): rows for key, rows in figures.items()}
    plain = {
        "id": "x/y",
        "name": "Netmetal",
        "composition": {},
        "density": None,
        "density_how": "",
        "figures": named,
        "boundaries": [],
        "melt": "bench",
    }
    return {"alloys": {"x/y": plain}}


SHEET = made_up(
    hardness=[
        figure("HV", 50, state="annealed"),
        figure("HV", 90, state="half-hard", of="thickness", form="sheet", reduction=20.0),
        figure("HV", 120, state="hard", of="thickness", form="sheet", reduction=50.0),
    ],
)


def temper(tables: dict[str, Any], reduction: float, of: str, form: str) -> Answer:
    """The registered formula's answer for the invented alloy."""
    given = {"alloy": "x/y", "reduction": reduction, "of": of, "form": form}
    return register.compute("temper", given, tables)


@pytest.mark.parametrize(
    ("reduction", "of", "form", "low", "high", "state"),
    [
        (21, "thickness", "sheet", 90, 100, "half-hard"),
        (37, "thickness", "sheet", 116, 130, "hard"),
        (60, "thickness", "sheet", 132, 148, "spring"),
        (37, "area", "wire", 90, 100, "half-hard"),
        (84, "area", "wire", 132, 148, "spring"),
        (60, "diameter", "wire", 132, 148, "spring"),
    ],
)
def test_the_points_of_sterling_come_out(
    reduction: float, of: str, form: str, low: float, high: float, state: str, records: Library
) -> None:
    """A maker's chart of silver hardness, sterling: 90-100 HV half hard, 132-148 HV spring.

    60 percent of a wire's diameter is 84 percent of its area: geometry.
    """
    given = {"alloy": "sterling", "reduction": reduction, "of": of, "form": form}
    answer = computing.answer("temper", given, records)
    assert answer.outputs["hardness-low"] == pytest.approx(low)
    assert answer.outputs["hardness-high"] == pytest.approx(high)
    assert answer.outputs["temper"] == state
    assert answer.units["hardness-low"] == "HV"


def test_straight_in_true_strain() -> None:
    """Half-way between two points in strain is half-way in hardness. Source: the rule itself."""
    half = (-math.log(0.8) - math.log(0.5)) / 2
    answer = temper(SHEET, 100 * (1 - math.exp(-half)), "thickness", "sheet")
    assert answer.outputs["hardness-low"] == pytest.approx(105)
    soft = temper(SHEET, 100 * (1 - math.sqrt(0.8)), "thickness", "sheet")
    assert soft.outputs["hardness-high"] == pytest.approx(70)
    assert temper(SHEET, 0, "thickness", "sheet").outputs["hardness-low"] == 50


def test_the_unit_is_that_of_the_scale() -> None:
    brinell = made_up(
        hardness_brinell=[
            figure("HB", 50, state="annealed"),
            figure("HB", 90, state="hard", of="thickness", form="strip", reduction=50.0),
        ]
    )
    answer = temper(brinell, 50, "thickness", "strip")
    assert answer.units == dict.fromkeys(("hardness", "hardness-low", "hardness-high"), "HB")
    assert register.FORMULAS["temper"].unit_in("hardness-low", answer) == "HB"


def test_tempers_by_their_steps_alone() -> None:
    steps = made_up(
        temper_reduction=[
            figure("percent", 20, state="half-hard", of="thickness", form="strip"),
            figure("percent", 40, state="hard", of="thickness", form="strip"),
        ]
    )
    for reduction, expected in (
        (0, {"temper": "annealed", "next-temper": "half-hard"}),
        (10, {"temper": "below half-hard", "next-temper": "half-hard"}),
        (20, {"temper": "half-hard", "next-temper": "hard"}),
        (40, {"temper": "hard"}),
    ):
        assert temper(steps, reduction, "thickness", "strip").outputs == expected
    with pytest.raises(ValueError, match=r"ends at 40\.0 percent of the area"):
        temper(steps, 41, "thickness", "strip")


@pytest.mark.parametrize(
    ("reduction", "of", "form", "said"),
    [
        (51, "thickness", "sheet", "ends at 50.0 percent of the area; what more work gives"),
        (20, "area", "wire", "no table of hardness or temper over cold work of Netmetal as wire"),
        (20, "diameter", "sheet", "sheet and strip have no diameter"),
        (20, "thickness", "wire", "wire has no thickness"),
        (100, "thickness", "sheet", "between 0 and 100 percent"),
        (-1, "thickness", "sheet", "between 0 and 100 percent"),
        (20, "thickness", "rod", "form is sheet, strip or wire"),
    ],
)
def test_refused(reduction: float, of: str, form: str, said: str) -> None:
    with pytest.raises(ValueError, match=said):
        temper(SHEET, reduction, of, form)


def test_wire_and_sheet_are_never_mixed(records: Library) -> None:
    """The same words on wire mean another reduction (bench/tempers)."""
    given = {"alloy": "sterling", "reduction": 37, "of": "area"}
    wire = computing.answer("temper", {**given, "form": "wire"}, records).outputs
    sheet = computing.answer("temper", {**given, "form": "sheet"}, records).outputs
    assert wire["temper"] == "half-hard"
    assert sheet["temper"] == "hard"
