"""Whether a metal is among those that a record's rule names by what they are made of."""

from __future__ import annotations

from temperbook.records.causes import Which
from temperbook.records.models import Alloy, Applies, Solder


def any_of(rule: Which | Applies, metal: Alloy | Solder) -> bool:
    """Whether an element, the family or the structure of a metal is named; a solder's record has
    no structure."""
    shares = metal.composition
    structure = getattr(metal, "structure", None)
    return (
        metal.family in rule.families
        or any(e in shares and shares[e] >= least for e, least in rule.elements.items())
        or (structure is not None and structure.rule in rule.structure)
    )
