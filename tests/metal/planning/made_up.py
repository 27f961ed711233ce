"""A made-up alloy and bench for tests of the plan: no figure here is a real metal's."""

from temperbook.metal.facts import AlloyFacts, Known, Stated
from temperbook.metal.planning.asked import Equipment
from temperbook.metal.planning.plan import Bench
from temperbook.metal.spread import SpreadRule

EQUIPMENT = Equipment(
    roll_diameter=60,
    friction=0.2,
    per_pass={"forge": 0.2, "groove": 0.2, "flat": 0.15, "draw": 0.2},
    crop=0.1,
    scalp=0.05,
    trim=0.0,
    loss=0.0,
)
USUAL = Known(50, 50, "percent", "practice", of="not-stated")
BENCH = Bench(EQUIPMENT, USUAL, 1.0, 20, SpreadRule(-1.269, 0.56))


def percent(value, of="area", stage="annealed", how="quoted", process="any", form="any", high=None):
    """A limit in percent."""
    return Known(
        value,
        high or value,
        "percent",
        how,
        ("a-book",),
        of=of,
        stage=stage,
        process=process,
        form=form,
    )


def hardness(value, reduction=None, of="thickness", form="sheet", state="worked"):
    """A point of a table of hardness."""
    return Known(
        value,
        value + 10,
        "HV",
        "quoted",
        ("a-book",),
        of=of,
        form=form,
        state=state,
        reduction=reduction,
    )


def alloy(**figures):
    """The net-loft alloy with figures by quantity, `_` for `-`."""
    named = {key.replace("_", "-"): tuple(known) for key, known in figures.items()}
    return AlloyFacts(
        id="silver/net-loft",
        name="Net-loft silver",
        composition={"Ag": 90.0, "Cu": 10.0},
        density=10.0,
        density_how="quoted",
        figures=named,
        quench=Stated("air", "Cool in still air", "quoted", ("a-book",)),
        glow="First hint of dull red",
    )
