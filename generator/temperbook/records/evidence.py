"""Evidence rows: what a source prints, typed as printed, and what we read each row as."""

from __future__ import annotations

import csv
from dataclasses import dataclass, fields
from pathlib import Path

from temperbook.problems import Problem, nearest
from temperbook.records.figures import BASIS_KEYS, basis_text


@dataclass(frozen=True)
class Evidence:
    """One row of data/evidence/<source>.csv. `file` and `line` say where it stands."""

    id: str
    record: str
    quantity: str
    name: str
    element: str
    of: str
    process: str
    form: str
    state: str
    heat: str
    stage: str
    reduction: str
    word: str
    printed_label: str
    printed_value: str
    printed_unit: str
    conditions: str
    locator: str
    grade: str
    note: str
    file: str = ""
    line: int = 0

    @property
    def source(self) -> str:
        """Id of the source, which the row's id begins with."""
        return self.id.rsplit(".", 1)[0]

    def basis(self) -> dict[str, str]:
        """The basis keys that the row has."""
        given = {key: getattr(self, key) for key in BASIS_KEYS if getattr(self, key)}
        return {key: _basis_text(key, value) for key, value in given.items()}


def _basis_text(key: str, value: str) -> str:
    try:
        return basis_text(float(value) if key == "reduction" else value)
    except ValueError:
        return value


COLUMNS = [f.name for f in fields(Evidence) if f.name not in ("file", "line")]


def read(path: Path, shown: str) -> tuple[list[Evidence], list[Problem]]:
    """The rows of one file, and what is wrong with its form."""
    try:
        with path.open(encoding="utf-8", newline="") as stream:
            return _rows(csv.reader(stream, strict=True), shown)
    except (OSError, UnicodeDecodeError, csv.Error) as error:
        problem = Problem(
            shown,
            0,
            "cannot be read as CSV",
            found=str(error),
            needed="UTF-8, commas, quotes closed",
            mend="open it in a spreadsheet, look for an open quote, save as CSV (UTF-8)",
        )
        return [], [problem]


def _rows(reader: csv._reader, shown: str) -> tuple[list[Evidence], list[Problem]]:
    header = next(reader, [])
    if header != COLUMNS:
        odd = next((name for name in header if name not in COLUMNS), "")
        missing = [name for name in COLUMNS if name not in header]
        found = (
            f"unknown column `{odd}`, {nearest(odd, COLUMNS)}"
            if odd
            else (f"missing: {', '.join(missing)}" if missing else "another order")
        )
        return [], [
            Problem(
                shown,
                1,
                "has another header than evidence files have",
                found=found,
                needed=",".join(COLUMNS),
                mend="copy the header from another evidence file",
            )
        ]
    rows, problems = [], []
    for cells in reader:
        line = reader.line_num
        if len(cells) != len(COLUMNS):
            problems.append(
                Problem(
                    shown,
                    line,
                    "the row has another number of cells than the header",
                    found=str(len(cells)),
                    needed=str(len(COLUMNS)),
                    mend="put texts with a comma in double quotes",
                )
            )
            continue
        rows.append(Evidence(*(cell.strip() for cell in cells), file=shown, line=line))
    return rows, problems
