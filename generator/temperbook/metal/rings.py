"""Ring sizes of several systems, and the strip that makes a ring."""

from __future__ import annotations

import math
import re
from collections.abc import Mapping
from typing import Any

from temperbook.metal import guards

LEAST, MOST = 8.0, 32.0  # mm, inside diameters that a finger has

_NUMBER = re.compile(r"(\d+(?:\.\d+)?)?(?:\s*([123])/([248]))?", re.ASCII)
_LETTER = re.compile(r"([A-Z])(?:\s*([123])/([248]))?", re.ASCII)
_FORMS = {True: "L or L 1/2", False: "54 or 7 1/2"}
_FRACTIONS = {"½": " 1/2", "¼": " 1/4", "¾": " 3/4"}


def inside_diameter(size: str, system: Mapping[str, Any]) -> float:
    """Inside diameter [mm] of a ring size such as `54`, `7 1/2`, `L½`.

    system: `rule` with measure (diameter | circumference), first (of size 0) and step (of one
    size) [mm], or None; `sizes`: inside diameters [mm] by size where there is no rule; `letters`:
    whether sizes are letters, which count from A = 1. Formula: first + step n, over pi for a
    circumference. Source: each system's own. Errors: ValueError for a size that the system does
    not have.
    Example: inside_diameter("54", {"rule": {"measure": "circumference", "first": 0, "step": 1},
    "sizes": {}, "letters": False}) -> 17.19
    """
    text = _spaced(size)
    if system["rule"] is None:
        if text not in system["sizes"]:
            raise ValueError(f"`{size}` is no size of this system")
        return float(system["sizes"][text])
    rule = system["rule"]
    number = _number(text, system["letters"])
    if number is None:
        raise ValueError(f"`{size}` is no size of this system; write {_FORMS[system['letters']]}")
    measure = rule["first"] + rule["step"] * number
    diameter: float = measure / math.pi if rule["measure"] == "circumference" else measure
    if not LEAST <= diameter <= MOST:
        raise ValueError(f"`{size}` is no size of a finger in this system")
    return diameter


def _spaced(size: str) -> str:
    text = size.strip().upper()
    for sign, written in _FRACTIONS.items():
        text = text.replace(sign, written)
    return re.sub(r"\s+", " ", re.sub(r"(?<=[A-Z])(?=[123]/)", " ", text)).strip()


def _number(text: str, letters: bool) -> float | None:
    match = (_LETTER if letters else _NUMBER).fullmatch(text)
    if not text or match is None:
        return None
    whole = ord(match[1]) - ord("A") + 1 if letters else float(match[1] or 0)
    return whole + (int(match[2]) / int(match[3]) if match[2] else 0)


def blank_length(inside: float, thickness: float) -> float:
    """Length [mm] of the strip for a ring: inside diameter and thickness [mm].

    Valid for: a strip that is thin beside its ring; its middle keeps its length in bending.
    Formula: pi (d + t). Source: geometry of the middle line. Example: blank_length(17.2, 1.5) ->
    58.75
    """
    guards.above_zero(inside_diameter=inside, thickness=thickness)
    return math.pi * (inside + thickness)
