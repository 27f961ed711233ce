"""How each alloy is cooled after its anneal, by rule, with the reason."""

from __future__ import annotations

from temperbook.derive.handbook import Handbook
from temperbook.records.models import Alloy
from temperbook.views.comparing import tables
from temperbook.views.comparing.tables import Cell, Part, Row
from temperbook.views.formatting import MARKS

HEADS = ["Alloy", "Structure", "Quench from", "Do not linger", "Why so"]
UNKNOWN = "No rule was found"


def parts(handbook: Handbook) -> list[Part]:
    """A part for each way of cooling, in the order of the vocabulary, then those without one."""
    words = handbook.library.vocabulary.quantities["cooling"].words
    alloys = list(handbook.library.alloys.values())
    found = []
    for rule, said in words.items():
        rows = [_row(a, handbook) for a in alloys if a.quench and a.quench.rule == rule]
        if rows:
            found.append(Part(said, rule, HEADS, rows, sign=rule))
    rest = [_row(alloy, handbook) for alloy in alloys if alloy.quench is None]
    return [*found, Part(UNKNOWN, "none", HEADS, rest)] if rest else found


def _row(alloy: Alloy, handbook: Handbook) -> Row:
    words = handbook.library.vocabulary
    structure, quench = alloy.structure, alloy.quench
    kind = words.quantities["structure"].words[structure.rule] if structure else ""
    return Row(
        tables.link(alloy),
        [
            Cell(kind.split(":")[0], mark=MARKS[structure.how]) if structure else Cell("—"),
            *(_band(alloy, quantity, handbook) for quantity in ("quench-from", "no-dwell")),
            Cell(
                "",
                (quench.why or words.label("how", quench.how)) if quench else "",
                MARKS[quench.how] if quench else "",
            ),
        ],
    )


def _band(alloy: Alloy, quantity: str, handbook: Handbook) -> Cell:
    figures = alloy.figures.get(quantity, [])
    return tables.figure(alloy.id, quantity, figures[0], handbook) if figures else Cell("—")
