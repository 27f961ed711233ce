"""What a printed value says: a number, a range, or a bound."""

from __future__ import annotations

import re
from dataclasses import dataclass

_NUMBER = r"[-+]?\d+(?:\.\d+)?"
_FORM = re.compile(
    rf"(?P<sign><=|>=|<|>|~)?\s*(?P<low>{_NUMBER})(?:\s*[-–]\s*(?P<high>\d+(?:\.\d+)?))?\+?"
)


@dataclass(frozen=True)
class Printed:
    """A printed value in its printed unit; an open end is None."""

    low: float | None
    high: float | None
    about: bool = False

    @property
    def ends(self) -> tuple[float | None, float | None]:
        """Lower and upper end, both the same for a single number."""
        return self.low, self.high


def parse(text: str) -> Printed | None:
    """The numbers in a printed value; None where it is not of a known form.

    Forms: `779.1`, `600-650`, `<=0.004`, `>=110`, `~760`.
    """
    match = _FORM.fullmatch(text.strip())
    if not match:
        return None
    low = float(match["low"])
    high = float(match["high"]) if match["high"] else low
    sign = match["sign"]
    if sign in ("<=", "<"):
        return Printed(None, high)
    if sign in (">=", ">"):
        return Printed(low, None)
    return Printed(low, high, about=sign == "~")
