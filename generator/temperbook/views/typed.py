"""What people type at a key: a number, a number with its unit, or a word."""

from __future__ import annotations

import re

# Units that people write behind a number, as units.py calls them.
WRITTEN = ("degC", "degF", "K", "mm", "in", "um", "m", "g", "kg", "MPa", "ksi", "psi", "kgf/mm2")
_NUMBER = re.compile(r"([-+]?\d+(?:\.\d+)?)\s*([A-Za-z/0-9%]*)")


def value(text: str, unit: str) -> float | str:
    """A typed value in the unit that the input has; text where it is no number.

    Errors: ValueError for a unit that is unknown, or of another kind than the input's.
    """
    match = _NUMBER.fullmatch(text.strip())
    if not match:
        return text
    number, written = float(match[1]), match[2]
    if not written or (written == "%" and unit.startswith("percent")):
        return number
    from temperbook import units

    if written not in WRITTEN:
        raise ValueError(f"`{text}` has an unknown unit; one of {', '.join(WRITTEN)}")
    if unit not in units.known() or not units.same_kind(written, unit):
        raise ValueError(f"`{text}` is no {unit or 'plain number'}")
    return units.convert(number, written, unit)
