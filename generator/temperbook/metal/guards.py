"""What inputs of several subjects must hold: refused with a sentence, never a silent number."""

from __future__ import annotations


def above_zero(**given: float) -> None:
    """Holds that every given number is above zero. Errors: ValueError that names the first."""
    for name, value in given.items():
        if not value > 0:
            raise ValueError(f"{name.replace('_', '-')} must be above zero")


def fraction(value: float, name: str = "a reduction") -> None:
    """Holds that a share [1] lies at or above 0 and below 1. Errors: ValueError that names it."""
    if not 0 <= value < 1:
        raise ValueError(f"{name} lies between 0 and 100 percent")


def smaller_after(before: float, after: float, step: str, size: str) -> None:
    """Holds that a step takes a size away. Errors: ValueError that names the step and the size."""
    if not 0 < after < before:
        raise ValueError(f"{step} goes from a larger {size} to a smaller one above zero")
