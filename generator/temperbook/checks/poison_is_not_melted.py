"""No record invites a bench to melt arsenic, beryllium, cadmium or lead."""

from __future__ import annotations

from collections.abc import Iterator

from temperbook.metal.alloying import NEVER_MELTED
from temperbook.problems import Problem
from temperbook.records.load import Library


def check(library: Library) -> Iterator[Problem]:
    """Alloys and solders with one of the four poisons that say that a bench melts them."""
    for record_id, record in library.mixed.items():
        poison = [element for element in NEVER_MELTED if record.composition.get(element)]
        if poison and record.melt == "bench":
            yield library.document(record_id).problem(
                ("composition", poison[0]),
                f"a bench would melt {', '.join(poison)}",
                found="melt: bench"
                if "melt" in library.document(record_id).data
                else "no `melt`, which is bench",
                needed="melt: buy-stock, licensed or never",
                mend="say how the metal is come by; its fume and dust poison",
            )
