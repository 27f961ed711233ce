"""Compositions as people type them: `Ag 90, Cu 10`, in percent of the mass."""

from __future__ import annotations

import re
from collections.abc import Mapping

_PART = re.compile(r"([A-Z][a-z]?)\s*(\d+(?:\.\d+)?)", re.ASCII)
SLACK = 0.05  # percent by which shares may miss 100


def parse(given: str | Mapping[str, float]) -> dict[str, float]:
    """Shares [percent] by element of a text such as `Ag 90, Cu 10`; a mapping is taken as it is.

    Errors: ValueError for another form, an element named twice, a share that is no number at or
    above zero, or shares that do not sum to 100.
    """
    shares = dict(given) if isinstance(given, Mapping) else _read(given)
    for symbol, share in shares.items():
        if isinstance(share, bool) or not isinstance(share, int | float) or not share >= 0:
            raise ValueError(f"the share of {symbol} is no number at or above zero")
    total = sum(shares.values())
    if abs(total - 100) > SLACK:
        raise ValueError(f"shares sum to {total:g}, not to 100")
    return shares


def _read(text: str) -> dict[str, float]:
    shares: dict[str, float] = {}
    for part in text.split(","):
        match = _PART.fullmatch(part.strip())
        if not match:
            raise ValueError(f"`{part.strip()}` is no share; write `Ag 90, Cu 10`")
        if match[1] in shares:
            raise ValueError(f"{match[1]} is named twice")
        shares[match[1]] = float(match[2])
    return shares
