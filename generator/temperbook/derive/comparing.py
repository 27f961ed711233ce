"""What alloys are compared by: limits on one basis, densities side by side, hardening curves."""

from __future__ import annotations

from dataclasses import dataclass

from temperbook.derive import facts, limits
from temperbook.derive.handbook import Handbook
from temperbook.metal import hardening, reduction
from temperbook.metal.hardening import Curve
from temperbook.metal.runs import reduction_of
from temperbook.records.figures import Figure
from temperbook.records.models import Alloy

MIXED = "by mixing"


@dataclass(frozen=True)
class Densities:
    """The adopted density and the one by mixing, and how far the first lies off [percent]."""

    adopted: Figure | None
    mixed: Figure | None

    @property
    def off(self) -> float | None:
        """The adopted density over the mixed one, less one [percent]."""
        if self.adopted is None or self.mixed is None:
            return None
        return off(self.adopted, self.mixed)


def off(stated: Figure, mixed: Figure) -> float:
    """How far a stated density lies off the mixed one [percent]."""
    return 100 * (limits.middle(stated) / limits.lowest(mixed) - 1)


def of_area(figure: Figure) -> float:
    """A reduction limit as percent of the area.

    Ranges are read at their lower end; a basis that is not stated as the area; the thickness of
    wide sheet, which does not spread, is its area.
    """
    percent = limits.lowest(figure)
    if figure.of != "diameter":
        return percent
    return 100 * reduction.on_each_basis(percent / 100, "diameter", "round")["area"]


def densities(alloy: Alloy) -> Densities:
    """An alloy's density as adopted and as computed by mixing."""
    known = [f for f in alloy.figures.get("density", []) if f.ends != (None, None)]
    adopted = next((f for f in known if f.how != "computed"), None)
    return Densities(adopted, next((f for f in known if f.name == MIXED), None))


def curve(alloy: Alloy, scale: str, stock: str, handbook: Handbook) -> Curve | None:
    """How a scale (hardness, tensile) of an alloy rises with work, for flat stock or wire."""
    return hardening.of_scale(facts.of_alloy(alloy, handbook, words=False), scale, stock)


def area_points(found: Curve) -> tuple[tuple[float, float, float], ...]:
    """A curve's points as (percent of the area gone, lower end, upper end)."""
    return tuple((100 * reduction_of(p.strain), p.low, p.high) for p in found.points)
