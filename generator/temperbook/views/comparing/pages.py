"""The comparisons that there are: the stem of each page's prose, and what makes its parts."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType

from temperbook.derive.handbook import Handbook
from temperbook.views.comparing import anneals, coolings, densities, hardenings, workings
from temperbook.views.comparing.tables import Part

TOPICS: Mapping[str, Callable[[Handbook], list[Part]]] = MappingProxyType(
    {
        "compare/anneals": anneals.parts,
        "compare/limits": workings.parts,
        "compare/hardening": hardenings.parts,
        "compare/densities": densities.parts,
        "compare/cooling": coolings.parts,
    }
)
