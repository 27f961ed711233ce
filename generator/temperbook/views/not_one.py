"""What to say where a name leads to several alloys or to none."""

from __future__ import annotations

from collections.abc import Mapping

from temperbook.records.models import Alloy
from temperbook.records.names import Found


def not_one(wanted: str, found: Found, alloys: Mapping[str, Alloy]) -> list[str]:
    """The alloys that a name may mean, or those near it, as lines."""
    if found.ids:
        return [f"`{wanted}` may be:", *(f"  {i:<28} {alloys[i].name}" for i in found.ids)]
    if found.near:
        return [
            f"No alloy is called `{wanted}`. Near it:",
            *(f"  {i:<28} {alloys[i].name}" for i in found.near),
        ]
    return [f"No alloy is called `{wanted}`. `temperbook check` counts them; the index lists them."]
