"""The alloy in hand changes the ranking of causes, by the records alone."""

from __future__ import annotations

import pytest

from temperbook.derive import faults
from temperbook.derive.handbook import Handbook
from temperbook.records.causes import Cause, Which
from temperbook.records.figures import Provenance, Remark, Rule
from temperbook.records.models import Alloy, Fault


def alloy(name: str, structure: str = "", **shares: float) -> Alloy:
    rule = Rule(rule=structure, how="practice") if structure else None
    return Alloy(
        id=name,
        name=name,
        short=name[:14],
        about="Made up.",
        composition=shares,
        composition_source=Provenance(how="practice"),
        structure=rule,
    )


def cause(text: str, likely: str, **rules: Which) -> Cause:
    return Cause(text=text, likely=likely, tell="Look.", how="practice", **rules)  # type: ignore[arg-type]


def fault(*causes: Cause) -> Fault:
    said = [Remark(text="So.", how="practice")]
    return Fault(
        id="net-tears",
        name="The net tears",
        seen="A hole.",
        when=["rolling"],
        looks=["crack-edge"],
        picture="fault-edge-cracks",
        causes=list(causes),
        save="remelt",
        now=said,
        prevent=said,
    )


ORDERS = alloy("gold/order", "ordering", Au=75, Cu=25)
PLAIN = alloy("silver/plain", "two-phase", Ag=92.5, Cu=7.5)
NICKEL = alloy("gold/white", "two-phase", Au=75, Cu=12, Ni=10, Zn=3)


@pytest.mark.parametrize(
    ("which", "meant"),
    [
        (Which(alloys=["gold/order"]), [True, False, False]),
        (Which(families=["gold"]), [True, False, True]),
        (Which(elements={"Ni": 5}), [False, False, True]),
        (Which(elements={"Ni": 11}), [False, False, False]),
        (Which(structure=["ordering"]), [True, False, False]),
        (Which(families=["silver"], structure=["ordering"]), [True, True, False]),
        (None, [False, False, False]),
    ],
)
def test_which_alloys_are_meant(which: Which | None, meant: list[bool]) -> None:
    assert [faults.meant(which, one) for one in (ORDERS, PLAIN, NICKEL)] == meant


def test_causes_stand_by_likelihood_and_then_in_the_records_order() -> None:
    found = fault(
        cause("a", "sometimes"), cause("b", "usual"), cause("c", "usual"), cause("d", "rare")
    )
    assert faults.ranked(found) == [1, 2, 0, 3]


def test_the_metal_moves_a_cause_by_a_step() -> None:
    more, less = Which(structure=["ordering"]), Which(elements={"Ni": 1})
    found = fault(cause("a", "usual"), cause("b", "usual", more=more), cause("c", "often"))
    assert faults.ranked(found) == [0, 1, 2]
    assert faults.ranked(found, ORDERS) == [1, 0, 2]
    assert faults.ranked(found, PLAIN) == [0, 1, 2]
    found = fault(cause("a", "usual", less=less), cause("b", "often"), cause("c", "usual"))
    assert faults.ranked(found, NICKEL) == [2, 0, 1]


def test_a_cause_of_other_metals_only_is_left_out() -> None:
    only = Which(families=["silver"])
    found = fault(cause("a", "usual", only=only), cause("b", "rare"))
    assert faults.ranked(found) == [0, 1]
    assert faults.ranked(found, PLAIN) == [0, 1]
    assert faults.ranked(found, NICKEL) == [1]
    assert faults.orders(found, {a.id: a for a in (PLAIN, NICKEL)}) == {"gold/white": [1]}


def test_a_nickel_white_gold_that_cracks_is_not_a_sterling_that_cracks(handbook: Handbook) -> None:
    library = handbook.library
    white = library.alloys["gold/18ct-nickel-white"]
    sterling = library.alloys["silver/sterling-925"]
    differing = [
        f.id
        for f in library.faults.values()
        if faults.ranked(f, white) != faults.ranked(f, sterling)
    ]
    assert "edge-cracks" in differing
    assert len(differing) >= 5
    assert {f.id for f in faults.prone_to(white, library)} != {
        f.id for f in faults.prone_to(sterling, library)
    }


def test_a_fault_of_one_metal_names_the_metals_in_which_its_usual_cause_acts(
    handbook: Handbook,
) -> None:
    records, alloys = handbook.library.faults, handbook.library.alloys
    assert faults.usual_in(records["hydrogen-sickness"], alloys) == ["copper/tough-pitch"]
    assert "silver/sterling-925" not in faults.usual_in(records["order-embrittlement"], alloys)
    assert faults.usual_in(records["edge-cracks"], alloys) == []
