"""The steps of the work: what can hurt, what can go wrong there, and which step comes next."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import partial
from types import MappingProxyType

from temperbook.derive.handbook import Handbook
from temperbook.records.link_prose import STEPS
from temperbook.views import fault, pages
from temperbook.views.pages import CautionShown, Link

# Stem of a step -> words of the work in which its faults show, and tasks that cautions name.
AT: Mapping[str, tuple[tuple[str, ...], tuple[str, ...]]] = MappingProxyType(
    {
        "steps/melt": ((), ("melt",)),
        "steps/pour": (("pouring",), ("pour",)),
        "steps/crop-and-scalp": ((), ("cut",)),
        "steps/forge": (("forging",), ("forge",)),
        "steps/roll": (("rolling",), ("roll",)),
        "steps/draw": (("drawing",), ("draw",)),
        "steps/anneal": (("annealing",), ("anneal",)),
        "steps/quench": (("quenching",), ("quench",)),
        "steps/pickle": (("pickling",), ("pickle",)),
        "steps/finish": (("stock",), ("finish", "cut")),
        "steps/inspect": (("keeping",), ()),
        "steps/later-heat": ((), ("solder", "anneal")),
        "steps/test-first": ((), ("forge",)),
    }
)


@dataclass(frozen=True)
class StepShown:
    """What a step's page lists below its prose."""

    cautions: list[CautionShown]
    faults: list[Link]
    before: Link | None
    after: Link | None


def shown(stem: str, handbook: Handbook) -> StepShown:
    """The lists of one step."""
    works, tasks = AT.get(stem, ((), ()))
    cautions = [i for i, c in handbook.library.cautions.items() if set(tasks) & set(c.tasks)]
    place = STEPS.index(stem)
    return StepShown(
        pages.cautions(cautions, handbook),
        fault.at_work(works, handbook),
        _link(place - 1, handbook),
        _link(place + 1, handbook),
    )


def _link(place: int, handbook: Handbook) -> Link | None:
    if not 0 <= place < len(STEPS):
        return None
    prose = handbook.library.prose[f"pages/{STEPS[place]}"]
    return Link(prose.title, f"{STEPS[place]}/")


def listed(handbook: Handbook) -> list[Link]:
    """Every step and chapter, in the order of the work."""
    return [link for place in range(len(STEPS)) if (link := _link(place, handbook))]


LISTS: Mapping[str, Callable[[Handbook], StepShown]] = MappingProxyType(
    {stem: partial(shown, stem) for stem in STEPS}
)
