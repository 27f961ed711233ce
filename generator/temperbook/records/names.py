"""Finds an alloy by what people call it: id, last part of the id, name, alias or fineness."""

from __future__ import annotations

import difflib
import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Protocol

# The metal that gives a precious family its name and its fineness.
PRECIOUS = {"silver": "Ag", "gold": "Au", "platinum": "Pt", "palladium": "Pd"}


class Named(Protocol):
    """What an alloy is found by: the record itself, or the head of its file."""

    @property
    def name(self) -> str:
        """Its name."""

    @property
    def short(self) -> str:
        """Its short name."""

    @property
    def also(self) -> Sequence[str]:
        """Its other names."""

    @property
    def family(self) -> str:
        """The folder that it stands in."""

    @property
    def composition(self) -> Mapping[str, float]:
        """Percent by element."""


@dataclass(frozen=True)
class Found:
    """Ids that a name leads to; `near` holds suggestions where nothing matched."""

    ids: tuple[str, ...]
    near: tuple[str, ...] = ()


def normal(name: str) -> str:
    """A name without case, spaces and punctuation; British and American spellings made one."""
    text = re.sub(r"[^a-z0-9]+", "", name.lower())
    for spoken, written in (
        ("carat", "ct"),
        ("karat", "ct"),
        ("kt", "ct"),
        ("aluminum", "aluminium"),
    ):
        text = text.replace(spoken, written)
    return re.sub(r"(?<=\d)k(?=[a-z]|$)", "ct", text)


def fineness(alloy: Named) -> str:
    """Parts of the precious metal per thousand as people say them: `925`; empty for base metal."""
    metal = PRECIOUS.get(alloy.family)
    share = alloy.composition.get(metal, 0) if metal else 0
    return f"{min(int(share * 10 + 1e-6), 999)}" if share else ""


def find(name: str, alloys: Mapping[str, Named]) -> Found:
    """The alloys that a name means: an exact name or alias first, then a fineness, then a part
    of a name."""
    wanted = normal(name)
    exact = [i for i, a in alloys.items() if wanted in _names(i, a)]
    if exact:
        return Found(tuple(exact))
    by_fineness = [i for i, a in alloys.items() if wanted and fineness(a) == wanted]
    if by_fineness:
        return Found(tuple(by_fineness))
    partly = [
        i for i, a in alloys.items() if len(wanted) > 2 and any(wanted in n for n in _names(i, a))
    ]
    if partly:
        return Found(tuple(partly))
    return Found((), suggestions(wanted, alloys))


def suggestions(wanted: str, alloys: Mapping[str, Named]) -> tuple[str, ...]:
    """Ids with a name near the wanted one, the nearest first."""
    owners = {n: i for i, a in alloys.items() for n in _names(i, a)}
    near = difflib.get_close_matches(wanted, owners, n=5, cutoff=0.55)
    return tuple(dict.fromkeys(owners[n] for n in near))


def _names(alloy_id: str, alloy: Named) -> set[str]:
    names = (alloy_id, alloy_id.split("/")[-1], alloy.name, alloy.short, *alloy.also)
    return {normal(n) for n in names}
