"""Runs and draws on the holes of a plate: the fewest anneals first, then the most even runs."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise

from temperbook.metal.planning.asked import Impossible
from temperbook.metal.runs import DUST, Limits


def usable(before: float, after: float, per_draw: float, holes: Sequence[float]) -> list[float]:
    """The sizes [mm] from `before` down to `after` that the plate has, the start among them.

    Errors: Impossible where no hole is `after`, or a gap is wider than one draw [1 of the area].
    """
    inside = sorted(
        {h for h in holes if after * (1 - DUST) < h < before * (1 - DUST)}, reverse=True
    )
    if not inside or inside[-1] > after * (1 + DUST):
        raise Impossible("no-such-hole", size=after, nearest=_nearest(after, holes))
    sizes = [before, *inside]
    for large, small in pairwise(sizes):
        taken = 1 - (small / large) ** 2
        if taken > per_draw + 1e-9:
            raise Impossible(
                "gap-in-plate", large=large, small=small, taken=100 * taken, most=100 * per_draw
            )
    return sizes


def _nearest(size: float, holes: Sequence[float]) -> float:
    return min(holes, key=lambda hole: abs(hole - size), default=0.0)


def stops(
    sizes: Sequence[float], first: Limits, later: Limits, last: float | None, more: int
) -> list[int]:
    """Where the anneals fall: positions in `sizes` at which a run ends, the end included.

    sizes: diameters [mm], falling. last: work [1] that the last run comes nearest to, or None.
    more: anneals beyond the fewest. Errors: Impossible where no choice of holes keeps the ceilings.
    """
    work = [2 * math.log(sizes[0] / size) for size in sizes]
    final = len(sizes) - 1
    if last is None:
        return _even(work, final, first, later, more)
    opened = _before_last(work, final, last, later)
    if opened == 0:
        return [final]
    return [*_even(work, opened, first, later, more), final]


def _before_last(work: Sequence[float], final: int, last: float, later: Limits) -> int:
    """The hole from which the last run comes nearest to the work that gives the temper."""
    fitting = [p for p in range(final) if work[final] - work[p] <= later.ceiling + DUST]
    if not fitting:
        raise Impossible("holes-under-ceiling")
    return min(fitting, key=lambda p: (abs(work[final] - work[p] - last), p))


def _even(work: Sequence[float], final: int, first: Limits, later: Limits, more: int) -> list[int]:
    """The fewest runs, with the smallest sum of squares of their work, which is the most even."""
    best: list[dict[int, tuple[float, list[int]]]] = [{0: (0.0, [])}]
    fewest = 0
    for number in range(1, len(work) + 1):
        limits = first if number == 1 else later
        reached: dict[int, tuple[float, list[int]]] = {}
        for start, (cost, route) in best[-1].items():
            for stop in range(start + 1, final + 1):
                done = work[stop] - work[start]
                if done > limits.ceiling + DUST:
                    break
                total = cost + done * done
                if stop not in reached or total < reached[stop][0] - 1e-12:
                    reached[stop] = (total, [*route, stop])
        best.append(reached)
        if final in reached and not fewest:
            fewest = number
        if fewest and (number == fewest + more or not reached):
            break
    chosen = best[min(len(best) - 1, fewest + more)] if fewest else {}
    if final in chosen:
        return chosen[final][1]
    if fewest:
        return best[fewest][final][1]
    raise Impossible("holes-under-ceiling")
