"""How an alloy changes what a fault most likely comes from; which faults an alloy is prone to."""

from __future__ import annotations

from collections.abc import Mapping

from temperbook.derive import composed
from temperbook.records.causes import Cause, Which
from temperbook.records.load import Library
from temperbook.records.models import Alloy, Fault

# Words of likelihood, the likeliest first; `more` and `less` move a cause by one of them.
LIKELY = ("usual", "often", "sometimes", "rare")


def meant(which: Which | None, alloy: Alloy) -> bool:
    """Whether an alloy is among those that a rule names."""
    return which is not None and (alloy.id in which.alloys or composed.any_of(which, alloy))


def ranked(fault: Fault, alloy: Alloy | None = None) -> list[int]:
    """Positions of the causes, the likeliest first, in general or for an alloy.

    For an alloy a cause moves by a step where the record says so, and one that is possible in other
    alloys only is left out. Causes of one likelihood keep the order of the record.
    """
    places = {
        position: place
        for position, cause in enumerate(fault.causes)
        if (place := _place(cause, alloy)) is not None
    }
    return sorted(places, key=lambda position: (places[position], position))


def _place(cause: Cause, alloy: Alloy | None) -> float | None:
    place = float(LIKELY.index(cause.likely))
    if alloy is None:
        return place
    if cause.only is not None and not meant(cause.only, alloy):
        return None
    # Past the ends of the scale too, so that what is likelier here stands before what is usual.
    return place - meant(cause.more, alloy) + meant(cause.less, alloy)


def orders(fault: Fault, alloys: Mapping[str, Alloy]) -> dict[str, list[int]]:
    """The ranking for each alloy in which it differs from the general one."""
    general = ranked(fault)
    found = {alloy_id: ranked(fault, alloy) for alloy_id, alloy in alloys.items()}
    return {alloy_id: order for alloy_id, order in found.items() if order != general}


def usual_in(fault: Fault, alloys: Mapping[str, Alloy]) -> list[str]:
    """The alloys in which a usual cause of the fault can act; none are named where it can in all.

    Hydrogen sickness is a fault of copper with oxygen: its usual cause is possible nowhere else.
    """
    usual = [cause for cause in fault.causes if cause.likely == "usual"]
    if not usual or any(cause.only is None for cause in usual):
        return []
    return [i for i, alloy in alloys.items() if any(meant(c.only, alloy) for c in usual)]


def prone_to(alloy: Alloy, library: Library) -> list[Fault]:
    """The faults that an alloy is likeliest to show."""
    return [fault for fault in library.faults.values() if meant(fault.prone, alloy)]
