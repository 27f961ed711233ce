"""The exported tables say what the handbook says, and the package that describes them is valid."""

from __future__ import annotations

import csv
import io
import json
import subprocess
import sys
from pathlib import Path

import pytest
from click.testing import CliRunner

from temperbook.cli import main
from temperbook.derive.handbook import Handbook
from temperbook.outputs import exports
from temperbook.paths import Project

HEADER = "address,record,quantity,value,low,high,unit,of,process,form,state,how,from,grade"
VALIDATE = """
import sys
from frictionless import Package
report = Package(sys.argv[1]).validate()
wrong = [error.message for task in report.tasks for error in task.errors]
print("\\n".join([*wrong, *(error.message for error in report.errors)]))
sys.exit(0 if report.valid else 1)
"""


@pytest.fixture(scope="module")
def files(handbook: Handbook) -> dict[str, bytes]:
    return exports.files(handbook)


def table(content: bytes) -> list[dict[str, str]]:
    return list(csv.DictReader(io.StringIO(content.decode("utf-8"), newline="")))


def validated(folder: Path) -> subprocess.CompletedProcess[str]:
    """In a process of its own: the library warns of its own libraries, which fails a test here."""
    words = [sys.executable, "-c", VALIDATE, "datapackage.json"]
    return subprocess.run(words, cwd=folder, capture_output=True, text=True, check=False)


def test_the_package_is_valid_and_a_slip_in_a_table_is_found(
    files: dict[str, bytes], tmp_path: Path
) -> None:
    pytest.importorskip("frictionless", reason="frictionless is not installed")
    for name, content in files.items():
        (tmp_path / name).write_bytes(content)
    good = validated(tmp_path)
    assert good.returncode == 0, good.stdout + good.stderr
    slipped = files["figures.csv"].replace(b",degC,", b",degC,x,", 1)
    (tmp_path / "figures.csv").write_bytes(slipped)
    assert validated(tmp_path).returncode == 1


def test_every_figure_stands_in_its_table_unrounded(
    files: dict[str, bytes], handbook: Handbook
) -> None:
    assert files["figures.csv"].decode("utf-8").splitlines()[0] == HEADER
    rows = {row["address"]: row for row in table(files["figures.csv"])}
    assert set(rows) == set(handbook.figures)
    for address, called in handbook.figures.items():
        row, figure = rows[address], called.figure
        for key in ("value", "low", "high"):
            number = getattr(figure, key)
            assert (float(row[key]) if row[key] else None) == number, address
        assert row["how"] == figure.how
        assert row["from"].split() == figure.from_
        assert bool(row["grade"]) == bool(figure.from_)


def test_every_row_and_source_is_there_as_printed(
    files: dict[str, bytes], handbook: Handbook
) -> None:
    rows = {row["id"]: row for row in table(files["evidence.csv"])}
    assert set(rows) == set(handbook.library.evidence)
    for row_id, row in handbook.library.evidence.items():
        assert rows[row_id]["printed_value"] == row.printed_value
        assert rows[row_id]["source"] == row.source
    assert {row["id"] for row in table(files["sources.csv"])} == set(handbook.library.sources)


def test_alloys_carry_all_their_provenance(files: dict[str, bytes], handbook: Handbook) -> None:
    alloys = json.loads(files["alloys.json"])
    assert [alloy["id"] for alloy in alloys] == list(handbook.library.alloys)
    sterling = next(alloy for alloy in alloys if alloy["id"] == "silver/sterling-925")
    anneal = next(f for f in sterling["figures"] if f["address"].endswith("#anneal@heat=torch"))
    assert (anneal["low"], anneal["high"], anneal["unit"]) == (600, 650, "degC")
    assert anneal["sources"]
    assert sterling["quench"]["rule"] == "water-after-glow"
    assert "pickle-acid" in sterling["cautions"]
    for alloy in alloys:
        for said in [*alloy["figures"], *alloy["remarks"], alloy["composition_source"]]:
            assert said["how"]
            assert bool(said["from"]) == bool(said["sources"])


def test_faults_carry_causes_checks_and_remedies(
    files: dict[str, bytes], handbook: Handbook
) -> None:
    faults = json.loads(files["faults.json"])
    assert [fault["id"] for fault in faults] == list(handbook.library.faults)
    for fault in faults:
        record = handbook.library.faults[fault["id"]]
        assert [c["likely"] for c in fault["causes"]] == [c.likely for c in record.causes]
        for said in [*fault["causes"], *fault["now"], *fault["prevent"]]:
            assert said["text"]
            assert said["how"]
            assert bool(said["from"]) == bool(said["sources"])
        assert all(cause["tell"] for cause in fault["causes"]), fault["id"]
    fire = next(f for f in faults if f["id"] == "fire-cracking")
    assert any(cause["more"] or cause["less"] or cause["only"] for cause in fire["causes"])


def test_cautions_say_their_rule_and_what_carries_them(
    files: dict[str, bytes], handbook: Handbook
) -> None:
    cautions = {c["id"]: c for c in json.loads(files["cautions.json"])}
    assert list(cautions) == list(handbook.library.cautions)
    zinc = cautions["zinc-fume"]
    assert zinc["applies"] == {"elements": {"Zn": 1}}
    bearing = {a.id for a in handbook.library.alloys.values() if a.composition.get("Zn", 0) >= 1}
    assert set(zinc["alloys"]) >= bearing
    assert bearing
    assert all(c["consequence"] and c["avoid"] and c["decides"] for c in cautions.values())


def test_the_dictionary_explains_every_quantity_and_word(files: dict[str, bytes]) -> None:
    quantities = {row["quantity"]: row for row in table(files["quantities.csv"])}
    words = {(row["vocabulary"], row["word"]) for row in table(files["words.csv"])}
    for row in table(files["figures.csv"]):
        assert quantities[row["quantity"]]["meaning"]
        for key in ("of", "process", "form", "state", "how"):
            assert not row[key] or (key, row[key]) in words, row["address"]


def test_a_spreadsheet_opens_them_without_repair(files: dict[str, bytes]) -> None:
    """No line break within a cell, nothing that a spreadsheet would run, lines end as RFC 4180."""
    for name in (name for name in files if name.endswith(".csv")):
        text = files[name].decode("utf-8")
        assert text.count("\n") == text.count("\r\n"), name
        for row in csv.reader(io.StringIO(text, newline="")):
            assert not any("\n" in cell or cell.startswith(("=", "@", "\t")) for cell in row), name


def test_the_command_writes_them_and_replaces_only_its_own(small: Project, tmp_path: Path) -> None:
    out = tmp_path / "tables"
    words = ["--project", str(small.root), "export", "--out", str(out)]
    first = CliRunner().invoke(main, words)
    assert first.exit_code == 0, first.output
    assert (out / "figures.csv").read_text("utf-8").startswith(HEADER)
    assert CliRunner().invoke(main, words).exit_code == 0
    mine = tmp_path / "mine"
    mine.mkdir()
    (mine / "letter.txt").write_text("keep me", "utf-8")
    refused = CliRunner().invoke(main, [*words[:-1], str(mine)])
    assert refused.exit_code == 2
    assert (mine / "letter.txt").read_text("utf-8") == "keep me"


def test_the_site_offers_the_same_files(built: Path, files: dict[str, bytes]) -> None:
    page = (built / "sources/index.html").read_text(encoding="utf-8")
    for name, content in files.items():
        assert (built / "data" / name).read_bytes() == content, name
        assert f'href="../data/{name}"' in page, name
