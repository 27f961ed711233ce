"""Evidence rows: what a source prints, typed as printed, and what we read each row as."""

from __future__ import annotations

import csv
import io
from dataclasses import dataclass, field, fields
from pathlib import Path
from typing import TYPE_CHECKING

from temperbook.problems import Problem, nearest
from temperbook.records import text_file
from temperbook.records.figures import BASIS_KEYS, basis_text

if TYPE_CHECKING:
    from _csv import Reader


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


@dataclass
class _Reading:
    """What one file gave: rows, problems, and the ids of rows (or of the source) that were lost."""

    file: str
    source: str
    rows: list[Evidence] = field(default_factory=list)
    problems: list[Problem] = field(default_factory=list)
    lost: set[str] = field(default_factory=set)

    def refuse_file(self, line: int, text: str, found: str, needed: str, mend: str) -> None:
        """Reports what makes the rest of the file unreadable."""
        self.problems.append(Problem(self.file, line, text, found, needed, mend))
        self.lost.add(self.source)


def read(path: Path, shown: str) -> tuple[list[Evidence], list[Problem], set[str]]:
    """The rows of one file, what is wrong with its form, and the ids of what could not be read."""
    reading = _Reading(shown, path.stem)
    text, unreadable = text_file.read(path, shown)
    if unreadable:
        reading.problems.append(unreadable)
        reading.lost.add(reading.source)
    else:
        _read_rows(csv.reader(io.StringIO(text), strict=True), reading)
    return reading.rows, reading.problems, reading.lost


def _read_rows(reader: Reader, reading: _Reading) -> None:
    try:
        if _right_header(next(reader, []), reading):
            for cells in reader:
                _read_row(cells, reader.line_num, reading)
    except csv.Error as error:
        reading.refuse_file(
            reader.line_num,
            "is not CSV from here on, or from an open quote above",
            str(error),
            'commas between cells; a text with a comma in "double quotes"',
            "look for a quote that is not closed",
        )


def _right_header(header: list[str], reading: _Reading) -> bool:
    if header == COLUMNS:
        return True
    odd = next((name for name in header if name not in COLUMNS), "")
    missing = [name for name in COLUMNS if name not in header]
    if odd:
        found = f"unknown column `{odd}`, {nearest(odd, COLUMNS)}"
    else:
        found = f"missing: {', '.join(missing)}" if missing else "another order"
    reading.refuse_file(
        1,
        "has another header than evidence files have",
        found,
        ",".join(COLUMNS),
        "copy the header from another evidence file",
    )
    return False


def _read_row(cells: list[str], line: int, reading: _Reading) -> None:
    if len(cells) == len(COLUMNS):
        stripped = {name: cell.strip() for name, cell in zip(COLUMNS, cells, strict=True)}
        reading.rows.append(Evidence(**stripped, file=reading.file, line=line))
        return
    if cells:
        reading.lost.add(cells[0].strip())
    reading.problems.append(
        Problem(
            reading.file,
            line,
            "the row has another number of cells than the header",
            found=str(len(cells)),
            needed=str(len(COLUMNS)),
            mend="put texts with a comma in double quotes; delete empty lines",
        )
    )
