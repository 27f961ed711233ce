"""Reads the tables that the tests of published examples type, and says how exactly one prints."""

from __future__ import annotations


def table(text: str) -> list[list[str]]:
    """The rows of a typed table: a row a line, its cells parted by `|`."""
    lines = (line.strip() for line in text.splitlines())
    return [[cell.strip() for cell in line.split("|")] for line in lines if line]


def half_a_digit(printed: str) -> float:
    """Half a unit in the last printed place, with room for binary dust. Example: 2.25 -> 0.005."""
    return 0.5 * 10.0 ** -len(printed.partition(".")[2]) * 1.0001


def percent_off(printed: float, found: float) -> float:
    """By how many percent a printed answer lies above what its printed inputs give."""
    return 100 * (printed / found - 1)
