"""DEVELOPERS.md and README.md tell the truth."""

from __future__ import annotations

import re

import yaml
from click.testing import CliRunner

from temperbook.cli import COMMANDS, main
from temperbook.paths import project
from temperbook.records.figures import How
from temperbook.records.models import Alloy

ROOT = project().root


def test_the_example_record_is_valid() -> None:
    text = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
    block = re.search(r"```yaml\n(.*?)```", text, re.S)
    assert block
    record = Alloy.model_validate(yaml.safe_load(block[1]))
    assert record.id == "silver/net-loft-910"
    assert sum(record.composition.values()) == 100


def test_every_way_of_knowing_is_explained() -> None:
    text = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
    for how in How.__args__:  # type: ignore[attr-defined]
        assert f"| `{how}` |" in text


def test_every_folder_of_the_generator_is_named() -> None:
    text = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
    folders = [
        p.name for p in (ROOT / "generator/temperbook").iterdir() if (p / "__init__.py").exists()
    ]
    assert len(folders) >= 8
    for folder in folders:
        assert f"`generator/temperbook/{folder}/`" in text


def test_readme_names_every_command_and_its_pictures_exist() -> None:
    text = (ROOT / "README.md").read_text(encoding="utf-8")
    for command in COMMANDS:
        assert f"temperbook {command}" in text
    pictures = re.findall(r"!\[[^\]]*\]\(([^)]+)\)", text)
    assert len(pictures) == 2
    for picture in pictures:
        assert (ROOT / picture).exists()


def test_each_command_has_help_with_an_example() -> None:
    for command in COMMANDS:
        result = CliRunner().invoke(main, [command, "--help"])
        assert result.exit_code == 0
        assert "Example" in result.output
