"""Files that cannot be read are told, with the line where one is known."""

from __future__ import annotations

from pathlib import Path

from temperbook.records import text_file


def test_missing(tmp_path: Path) -> None:
    text, problem = text_file.read(tmp_path / "none.yaml", "data/none.yaml")
    assert text == ""
    assert problem is not None
    assert str(problem).startswith("data/none.yaml: cannot be read\n  found   No such file")


def test_a_folder_with_the_name_of_a_file(tmp_path: Path) -> None:
    (tmp_path / "a.yaml").mkdir()
    _, problem = text_file.read(tmp_path / "a.yaml", "a.yaml")
    assert problem is not None
    assert problem.found == "Is a directory"


def test_latin_1(tmp_path: Path) -> None:
    (tmp_path / "a.md").write_bytes("# Wärme\n\nzwei\n".encode("latin-1"))
    _, problem = text_file.read(tmp_path / "a.md", "a.md")
    assert problem is not None
    assert (problem.line, problem.found) == (1, "byte 0xe4")


def test_byte_order_mark(tmp_path: Path) -> None:
    (tmp_path / "a.md").write_bytes("\ufeff# Wärme\n".encode())
    assert text_file.read(tmp_path / "a.md", "a.md") == ("# Wärme\n", None)
