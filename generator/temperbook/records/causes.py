"""Causes of faults, and the alloys in which they are likelier: parts of a fault's record."""

from __future__ import annotations

from typing import Literal

from temperbook.records.figures import Provenance, Strict, Text


class Which(Strict):
    """Which alloys are meant: those that any of its parts names.

    alloys: ids. families, structure: words. elements: at least this share [percent] of the mass.
    """

    alloys: list[Text] = []
    families: list[Text] = []
    elements: dict[str, float] = {}
    structure: list[Text] = []


class Cause(Provenance):
    """Why a fault comes about. tell: how to tell it from the others.

    more, less: alloys in which it is likelier, or less likely, by a step. only: the alloys that it
    is possible in at all.
    """

    text: Text
    likely: Literal["usual", "often", "sometimes", "rare"]
    tell: Text
    more: Which | None = None
    less: Which | None = None
    only: Which | None = None
