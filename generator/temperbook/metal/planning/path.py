"""Which section the metal has when a share of the work is done."""

from __future__ import annotations

import math

from temperbook.metal import reduction
from temperbook.metal.planning.asked import Impossible, Request
from temperbook.metal.sections import Section

SAME = 1 + 1e-9  # sizes that differ by less are one


def process_of(start: Section, end: Section) -> str:
    """The process that leads from one section to another where none is named.

    Errors: Impossible from a flat to a round or square, which begins with a cut strip.
    """
    if end.shape == "flat":
        return "flat"
    if start.shape == "flat":
        raise Impossible("strip-first", thickness=start.thickness, end=end.text)
    return "draw" if end.shape == "round" else "groove"


def process_for(request: Request) -> str:
    """The process that is asked for, held to what it makes, or the one that the sections tell.

    Errors: Impossible.
    """
    if not request.process:
        return process_of(request.start, request.end)
    hold_process(request.process, request.end)
    return request.process


def hold_process(process: str, end: Section) -> None:
    """Refuses a process that does not make such a section. Errors: Impossible."""
    fits = {"flat": ("flat",), "draw": ("round", "square"), "groove": ("square", "round")}
    if process in fits and end.shape not in fits[process]:
        raise Impossible("process-shape", process=process, end=end.text)


def hold_smaller(start: Section, end: Section) -> None:
    """Refuses an end that is larger or thicker than the start. Errors: Impossible."""
    if end.area > start.area * SAME:
        raise Impossible("end-larger", start=start.text, end=end.text)
    if end.shape == "flat" and end.thickness > start.thickness * SAME:
        raise Impossible("end-thicker", start=start.text, end=end.text)


def hold_rolled(start: Section, end: Section) -> None:
    """Refuses a flat that only grows narrower: that is a cut, and no work. Errors: Impossible."""
    flat = end.shape == "flat" and end.thickness >= start.thickness / SAME
    if flat and end.width < start.width / SAME:
        raise Impossible("cut-to-width", width=end.width)


def work(start: Section, end: Section) -> float:
    """Work [1] from start to end: true strain, never below zero."""
    return max(0.0, reduction.true_strain(start, end))


def at(start: Section, end: Section, share: float) -> Section:
    """The section after a share [1] of the work: sizes in geometric steps, in the end's shape.

    Valid for: 0 <= share <= 1; at 0 the start itself. Formula: A = A0 (A1/A0)^share; for a flat
    t = t0 (t1/t0)^share and w = w0 (w1/w0)^share, a round counting as wide as its area asks.
    """
    if share <= 0:
        return start
    if share >= 1:
        return end
    if end.shape == "flat":
        before = start.area / start.thickness if start.shape == "round" else start.width
        thickness = start.thickness * (end.thickness / start.thickness) ** share
        return Section("flat", before * (end.width / before) ** share, thickness)
    area = start.area * (end.area / start.area) ** share
    side = math.sqrt(area * 4 / math.pi) if end.shape == "round" else math.sqrt(area)
    return Section(end.shape, side, side)


def linear_reduction(before: Section, after: Section) -> tuple[str, float] | None:
    """The other basis [percent] beside the area: `diameter` or `thickness`, where both have one."""
    if before.shape == after.shape == "round":
        return "diameter", 100 * reduction.reduction(before.thickness, after.thickness)
    if after.shape == "flat" or "round" not in (before.shape, after.shape):
        return "thickness", 100 * reduction.reduction(before.thickness, after.thickness)
    return None


def area_reduction(before: Section, after: Section) -> float:
    """Area reduction [percent]."""
    return 100 * reduction.reduction(before.area, after.area)
