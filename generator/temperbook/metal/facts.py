"""What a computation needs to know of an alloy: plain numbers, each with where it comes from."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

Composition = Mapping[str, float]


@dataclass(frozen=True)
class Known:
    """A number, range or bound [unit] with the basis and the provenance that its record states.

    low, high: both the same for a single number; None where the source gives no such end. how:
    word of provenance. sources: ids of the works. basis keys: empty where the record has none.
    """

    low: float | None
    high: float | None
    unit: str
    how: str
    sources: tuple[str, ...] = ()
    name: str = ""
    of: str = ""
    process: str = ""
    form: str = ""
    state: str = ""
    heat: str = ""
    stage: str = ""
    reduction: float | None = None

    @property
    def lowest(self) -> float:
        """Its lower end [unit], or the only one that it has."""
        value = self.low if self.low is not None else self.high
        assert value is not None
        return value

    @property
    def highest(self) -> float:
        """Its upper end [unit], or the only one that it has."""
        value = self.high if self.high is not None else self.low
        assert value is not None
        return value


@dataclass(frozen=True)
class Stated:
    """A closed word (how to cool, which pickle), what it says, and where it comes from."""

    rule: str
    text: str
    how: str
    sources: tuple[str, ...] = ()


@dataclass(frozen=True)
class AlloyFacts:
    """An alloy as computations see it.

    composition: mass percent by element. density: [g/cm3], adopted or by mixing as density_how
    says. melt: bench | buy-stock | licensed | never. cold: whether it is worked cold at all.
    figures: by quantity, in the record's order. glow: how an eye meets its anneal, in words.
    cautions: id, signal and name of each, gravest first.
    """

    id: str
    name: str
    composition: Composition
    density: float | None
    density_how: str
    melt: str = "bench"
    cold: bool = True
    figures: Mapping[str, tuple[Known, ...]] = field(default_factory=dict)
    heating: Stated | None = None
    quench: Stated | None = None
    pickle: Stated | None = None
    glow: str = ""
    cautions: tuple[tuple[str, str, str], ...] = ()

    def of(self, quantity: str) -> tuple[Known, ...]:
        """The figures of a quantity; none where the record has none."""
        return self.figures.get(quantity, ())
