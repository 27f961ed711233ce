"""Evidence files: the header, the rows with their lines, and what is lost with a slip."""

from __future__ import annotations

from pathlib import Path

import pytest

from temperbook.records.evidence import COLUMNS, Evidence, read

HEADER = ",".join(COLUMNS)
ROW = "s.1,a/b,anneal,,,,,,,torch,,,,label,600-650,degC,thin,page 1,A,note"


def rows(text: str, folder: Path) -> tuple[list[Evidence], list[tuple[int, str]], set[str]]:
    path = folder / "s.csv"
    path.write_text(text, encoding="utf-8")
    found, problems, lost = read(path, "data/evidence/s.csv")
    return found, [(p.line, p.text) for p in problems], lost


def test_a_row(tmp_path: Path) -> None:
    (row,), problems, lost = rows(f"{HEADER}\n{ROW}\n", tmp_path)
    assert (problems, lost) == ([], set())
    assert (row.id, row.record, row.heat, row.printed_value) == ("s.1", "a/b", "torch", "600-650")
    assert (row.source, row.file, row.line) == ("s", "data/evidence/s.csv", 2)
    assert row.basis() == {"heat": "torch"}


def test_spaces_around_cells_do_not_count(tmp_path: Path) -> None:
    (row,), _, _ = rows(f"{HEADER}\n{ROW.replace('torch', ' torch ')}\n", tmp_path)
    assert row.heat == "torch"


def test_lines_behind_a_text_of_two_lines(tmp_path: Path) -> None:
    two = ROW.replace("note", '"a note\nof two lines"')
    found, problems, _ = rows(f"{HEADER}\n{two}\n{ROW.replace('s.1', 's.2')}\n", tmp_path)
    assert [(row.id, row.line) for row in found] == [("s.1", 3), ("s.2", 4)]
    assert not problems


def test_the_source_of_an_id_with_points() -> None:
    cells = dict.fromkeys(COLUMNS, "") | {"id": "us-16-cfr-23.5.12"}
    assert Evidence(**cells).source == "us-16-cfr-23.5"


@pytest.mark.parametrize(
    ("name", "reduction", "basis"),
    [("dark red", "", {"name": "dark-red"}), ("", "37.0", {"reduction": "37"}),
     ("", "hard", {"reduction": "hard"})],
)  # fmt: skip
def test_basis_as_addresses_write_it(name: str, reduction: str, basis: dict[str, str]) -> None:
    cells = dict.fromkeys(COLUMNS, "") | {"id": "s.1", "name": name, "reduction": reduction}
    assert Evidence(**cells).basis() == basis


def test_a_spreadsheet_puts_a_byte_order_mark_first(tmp_path: Path) -> None:
    found, problems, _ = rows(f"\ufeff{HEADER}\r\n{ROW}\r\n", tmp_path)
    assert (len(found), problems) == (1, [])


@pytest.mark.parametrize(
    ("header", "found"),
    [
        (HEADER.replace("locator", "page"), "unknown column `page`, "),
        (HEADER.replace("state,", ""), "missing: state"),
        (HEADER.replace("of,process", "process,of"), "another order"),
        ("", "missing: id, record"),
        (HEADER.replace(",", ";"), "unknown column `id;record;"),
    ],
)
def test_headers(header: str, found: str, tmp_path: Path) -> None:
    """The whole source is lost, so that no figure complains of each of its rows."""
    path = tmp_path / "s.csv"
    path.write_text(f"{header}\n{ROW}\n", encoding="utf-8")
    read_rows, (problem,), lost = read(path, "s.csv")
    assert (read_rows, lost) == ([], {"s"})
    assert problem.line == 1
    assert problem.found.startswith(found)


def test_a_row_of_another_length_is_lost_alone(tmp_path: Path) -> None:
    text = f"{HEADER}\n{ROW},more\n{ROW.replace('s.1', 's.2')}\n\n"
    found, problems, lost = rows(text, tmp_path)
    assert [row.id for row in found] == ["s.2"]
    assert [line for line, _ in problems] == [2, 4]
    assert lost == {"s.1"}


def test_an_open_quote_loses_the_source(tmp_path: Path) -> None:
    text = f"{HEADER}\n{ROW}\n{ROW.replace('label', chr(34) + 'label')}\n{ROW}\n"
    found, ((line, said),), lost = rows(text, tmp_path)
    assert [row.id for row in found] == ["s.1"]
    assert (line, lost) == (4, {"s"})
    assert said.startswith("is not CSV from here on")
