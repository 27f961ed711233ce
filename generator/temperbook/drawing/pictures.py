"""All drawn pictures of the handbook, by name."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from types import MappingProxyType

from temperbook.drawing import (
    drawplate,
    forge,
    grain_pictures,
    heat,
    heat_scale,
    ingot,
    quench,
    rolls,
    sections,
)
from temperbook.drawing.faults import FAULTS
from temperbook.drawing.shapes import Picture
from temperbook.drawing.steps import STEPS


@dataclass(frozen=True)
class PictureFacts:
    """What pictures take from the data.

    glow_colour: `#rrggbb` of a black body at a temperature [degC]. observers: each table's title
    and its colour names, each with its lowest and highest heat [degC], equal where one is given.
    """

    glow_colour: Callable[[float], str]
    observers: tuple[tuple[str, tuple[tuple[str, float, float], ...]], ...]


Draw = Callable[[PictureFacts], Picture]


def _without_facts(drawn: Callable[[], Picture]) -> Draw:
    return lambda facts: drawn()


PICTURES: Mapping[str, Draw] = MappingProxyType(
    {
        **{name: _without_facts(drawn) for name, drawn in STEPS.items()},
        "grain-cast": lambda facts: grain_pictures.grain_cast(),
        "grain-worked": lambda facts: grain_pictures.grain_worked(),
        "grain-annealed": lambda facts: grain_pictures.grain_annealed(),
        "grain-overheated": lambda facts: grain_pictures.grain_overheated(),
        "grain-row": lambda facts: grain_pictures.grain_row(),
        "anneal-time-temperature": lambda facts: heat.anneal_time_temperature(),
        "reduction-sheet": lambda facts: sections.reduction_sheet(),
        "reduction-wire": lambda facts: sections.reduction_wire(),
        "same-percent": lambda facts: sections.same_percent(),
        "heat-scale": lambda facts: heat_scale.heat_scale(facts.glow_colour, facts.observers),
        "heat-scale-tall": lambda facts: heat_scale.heat_scale_tall(
            facts.glow_colour, facts.observers
        ),
        "bright-and-black": lambda facts: heat.bright_and_black(facts.glow_colour),
        "ingot-section": lambda facts: ingot.ingot_section(),
        "roll-gap": lambda facts: rolls.roll_gap(),
        "forging-order": lambda facts: forge.forging_order(),
        "drawplate-section": lambda facts: drawplate.drawplate_section(),
        "quench-choices": lambda facts: quench.quench_choices(facts.glow_colour),
        "floor-and-ceiling": lambda facts: sections.floor_and_ceiling(),
        **{name: _without_facts(drawn) for name, drawn in FAULTS.items()},
    }
)


def draw(name: str, facts: PictureFacts) -> Picture:
    """The picture of a name, finished [mm]. Errors: KeyError for a name that no picture has."""
    return PICTURES[name](facts)
