"""Signs of the open standards, drawn here after what they show, by their ids. Where that was read
stands in `data/subjects/bench/safety-signs.yaml`.

No claim of conformity: neither the colours nor the proportions are the standards' own.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType

from temperbook.drawing.shapes import Picture
from temperbook.drawing.signs import first_aid, hazard, mandatory, prohibition, warning

SIGNS: Mapping[str, Callable[[], Picture]] = MappingProxyType(
    {
        "iso-w001": warning.general,
        "iso-w012": warning.electricity,
        "iso-w016": warning.toxic,
        "iso-w017": warning.hot_surface,
        "iso-w021": warning.flammable,
        "iso-w022": warning.sharp,
        "iso-w023": warning.corrosive,
        "iso-w024": warning.crushing,
        "iso-w025": warning.rollers,
        "iso-w027": warning.optical,
        "iso-w028": warning.oxidising,
        "iso-w029": warning.pressurised,
        "iso-w041": warning.asphyxiating,
        "iso-m003": mandatory.ears,
        "iso-m004": mandatory.eyes,
        "iso-m007": mandatory.opaque_eyes,
        "iso-m009": mandatory.gloves,
        "iso-m011": mandatory.wash_hands,
        "iso-m013": mandatory.face_shield,
        "iso-m016": mandatory.mask,
        "iso-m017": mandatory.respirator,
        "iso-p003": prohibition.open_flame,
        "iso-p010": prohibition.touch,
        "iso-p028": prohibition.wear_gloves,
        "iso-e003": first_aid.cross,
        "iso-e011": first_aid.eyewash,
        "ghs02": hazard.flame,
        "ghs03": hazard.flame_over_circle,
        "ghs04": hazard.gas_cylinder,
        "ghs05": hazard.corrosion,
        "ghs06": hazard.skull,
        "ghs07": hazard.exclamation,
        "ghs08": hazard.health,
        "ghs09": hazard.environment,
    }
)
