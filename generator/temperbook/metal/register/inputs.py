"""Inputs that several formulas have, and the short ways to declare one."""

from __future__ import annotations

from typing import Any

from temperbook.metal.register.formula import Input


def number(
    label: str, unit: str = "", default: float | None = None, optional: bool = False
) -> Input:
    """A number [unit]."""
    return Input("number", label, unit, default=default, optional=optional)


def section(label: str) -> Input:
    """A section such as `round 1.0`, `square 6` or `flat 20x1.5`."""
    return Input("section", label, "mm")


def composition(label: str) -> Input:
    """A composition such as `Ag 90, Cu 10` in percent of the mass."""
    return Input("composition", label, "percent")


def choice(label: str, *words: str) -> Input:
    """One of a few words."""
    return Input("choice", label, choices=words)


def name(label: str, choices_of: str = "") -> Input:
    """A free text such as the number of a gauge."""
    return Input("name", label, choices_of=choices_of)


def flag(label: str, default: Any = False) -> Input:
    """True or false."""
    return Input("flag", label, default=default)


def alloy(optional: bool = False) -> Input:
    """An alloy of the handbook by any of its names."""
    return Input("alloy", "Alloy", optional=optional)
