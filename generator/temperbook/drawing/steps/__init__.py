"""Pictures of the steps of the work, by name."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType

from temperbook.drawing.shapes import Picture
from temperbook.drawing.steps import heating, pouring, testing, working

STEPS: Mapping[str, Callable[[], Picture]] = MappingProxyType(
    {
        "mould-warm-dry": pouring.mould_warm_dry,
        "pour-stream": pouring.pour_stream,
        "crop-line": pouring.crop_line,
        "scalp-faces": pouring.scalp_faces,
        "groove-order": working.groove_order,
        "pass-light-heavy": working.pass_light_heavy,
        "fibre-and-bend": working.fibre_and_bend,
        "ring-spring-back": working.ring_spring_back,
        "annealing-too-often": heating.annealing_too_often,
        "quench-edge-first": heating.quench_edge_first,
        "solder-order": heating.solder_order,
        "bend-test": testing.bend_test,
        "bead-test": testing.bead_test,
        "reading-a-break": testing.reading_a_break,
    }
)
