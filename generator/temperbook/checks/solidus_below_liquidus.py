"""Metal starts to melt before it is all liquid, and is annealed below where it starts to melt."""

from __future__ import annotations

from collections.abc import Iterator

from temperbook.problems import Problem
from temperbook.records.load import Library
from temperbook.records.models import Alloy, Solder


def check(library: Library) -> Iterator[Problem]:
    """Alloys and solders whose temperatures stand in an impossible order."""
    for record_id, alloy in library.mixed.items():
        document = library.document(record_id)
        for solidus_at, solidus in _ends(alloy, "solidus", 0):
            for _, liquidus in _ends(alloy, "liquidus", 1):
                if solidus > liquidus:
                    yield document.problem(
                        ("figures", "solidus", solidus_at),
                        "solidus lies above the liquidus",
                        found=f"solidus {solidus:g} degC, liquidus {liquidus:g} degC",
                        needed="solidus at or below liquidus",
                        mend="the two may be exchanged in the source; look at another one",
                    )
        for melts in ("solidus", "melting-point"):
            for _, start in _ends(alloy, melts, 0):
                for anneal_at, anneal in _ends(alloy, "anneal", 1):
                    if anneal >= start:
                        yield document.problem(
                            ("figures", "anneal", anneal_at),
                            f"anneal reaches the {melts}",
                            found=f"anneal {anneal:g} degC, {melts} {start:g} degC",
                            needed=f"an anneal below the {melts}",
                            mend="look at both sources again",
                        )


def _ends(alloy: Alloy | Solder, quantity: str, end: int) -> list[tuple[int, float]]:
    found = []
    for position, figure in enumerate(alloy.figures.get(quantity, [])):
        low, high = figure.ends
        value = (low, high)[end] if (low, high)[end] is not None else (low, high)[1 - end]
        if value is not None and not figure.note:
            found.append((position, value))
    return found
