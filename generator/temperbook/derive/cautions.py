"""Which cautions an alloy carries: by composition and family, as the caution records say, and by
name."""

from __future__ import annotations

from temperbook.records.load import Library
from temperbook.records.models import Alloy, Caution, Solder

SIGNALS = ("danger", "warning", "caution")


def of_alloy(alloy: Alloy | Solder, library: Library) -> list[Caution]:
    """The cautions of an alloy or solder: those that hurt at once first, then the gravest."""
    found = [c for c in library.cautions.values() if c.id in alloy.cautions or applies(c, alloy)]
    return sorted(found, key=rank)


def applies(caution: Caution, alloy: Alloy | Solder) -> bool:
    """Whether a caution's own rule covers the alloy."""
    rule = caution.applies
    if rule.record_only:
        return False
    by_element = any(
        e in alloy.composition and alloy.composition[e] >= share
        for e, share in rule.elements.items()
    )
    structure = getattr(alloy, "structure", None)
    by_structure = structure is not None and structure.rule in rule.structure
    return rule.always or by_element or by_structure or alloy.family in rule.families


def rank(caution: Caution) -> tuple[bool, int, str]:
    """Sorts cautions: at once before later, danger before warning before caution."""
    return not caution.immediate, SIGNALS.index(caution.signal), caution.id
