"""The handbook's data as files for others: tables, alloys as JSON, and a package that describes
them."""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import fields
from typing import Any

from temperbook.derive.handbook import Called, Handbook
from temperbook.outputs import package
from temperbook.records.evidence import Evidence
from temperbook.views import exported, exported_work

Row = Sequence[Any]
LOCAL = ("file", "line")  # where a row stands in this project: nobody else's business


def files(handbook: Handbook) -> dict[str, bytes]:
    """Every file by name. The same records give the same bytes."""
    library = handbook.library
    tables: dict[str, tuple[Sequence[str], Iterable[Row]]] = {
        "figures.csv": (exported.FIGURE, map(exported.figure_row(library), _figures(handbook))),
        "evidence.csv": (evidence_columns(), map(_evidence, library.evidence.values())),
        "sources.csv": (exported.SOURCE, map(exported.source_row, library.sources.values())),
        "quantities.csv": (exported.QUANTITY, exported.quantities(library)),
        "words.csv": (exported.WORD, exported.words(library)),
    }
    made = {name: _csv(columns, rows) for name, (columns, rows) in tables.items()}
    alloys = [exported.alloy(a, handbook) for a in library.alloys.values()]
    made["alloys.json"] = _json(alloys)
    made["solders.json"] = _json([exported.solder(s, handbook) for s in library.solders.values()])
    made["faults.json"] = _json([exported_work.fault(f, handbook) for f in library.faults.values()])
    made["cautions.json"] = _json(
        [exported_work.caution(c, handbook) for c in library.cautions.values()]
    )
    made["datapackage.json"] = _json(package.described(handbook, evidence_columns()))
    return made


def evidence_columns() -> list[str]:
    """The columns of evidence.csv: the source, then those of the project's own files."""
    return ["source", *(f.name for f in fields(Evidence) if f.name not in LOCAL)]


def _figures(handbook: Handbook) -> list[Called]:
    return [handbook.figures[address] for address in sorted(handbook.figures)]


def _evidence(row: Evidence) -> Row:
    return [getattr(row, column) for column in evidence_columns()]


def _csv(columns: Sequence[str], rows: Iterable[Row]) -> bytes:
    text = io.StringIO(newline="")
    writer = csv.writer(text, lineterminator="\r\n")
    writer.writerow(columns)
    writer.writerows(rows)
    return text.getvalue().encode("utf-8")


def _json(data: Mapping[str, Any] | Sequence[Any]) -> bytes:
    return (json.dumps(data, ensure_ascii=False, indent=1) + "\n").encode("utf-8")
