"""How much the handbook holds and how each figure is known, for `temperbook check`."""

from __future__ import annotations

from collections import Counter
from typing import Any

from temperbook.derive import grades
from temperbook.derive.handbook import Handbook
from temperbook.problems import count

GRADES = ("A", "B", "C", "D")


def counts(handbook: Handbook) -> dict[str, Any]:
    """The counts as plain data; a figure's grade is the best among its rows."""
    library = handbook.library
    hows: Counter[str] = Counter(called.figure.how for called in handbook.figures.values())
    found: Counter[str] = Counter()
    for called in handbook.figures.values():
        grade = grades.best(called.figure.from_, library)
        if grade:
            found[grade] += 1
    return {
        "alloys": len(library.alloys),
        "solders": len(library.solders),
        "figures": sum(hows.values()),
        "evidence_rows": len(library.evidence),
        "sources": len(library.sources),
        "cautions": len(library.cautions),
        "figures_by_how": {how: hows.get(how, 0) for how in library.vocabulary.words["how"]},
        "figures_by_best_grade": {grade: found.get(grade, 0) for grade in GRADES},
    }


def lines(handbook: Handbook) -> list[str]:
    """The same in words, a line each."""
    found = counts(handbook)
    words = handbook.library.vocabulary
    text = [
        f"No problems: {count(found['alloys'], 'alloy')}, {count(found['figures'], 'figure')}, "
        f"{count(found['evidence_rows'], 'evidence row')}, {count(found['sources'], 'source')}, "
        f"{count(found['cautions'], 'caution')}.",
        "",
        "Figures by how they are known",
    ]
    for how, number in found["figures_by_how"].items():
        text.append(f"  {how:<10} {number:>5,}  {words.label('how', how)}")
    text += ["", "Figures that rest on rows, by the best grade among them"]
    for grade, number in found["figures_by_best_grade"].items():
        text.append(f"  {grade:<10} {number:>5,}  {words.label('grade', grade)}")
    return text
