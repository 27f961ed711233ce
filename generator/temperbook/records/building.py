"""Builds models from documents: the vocabulary's own, and each record's. Errors become problems."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from pydantic import BaseModel, ValidationError

from temperbook import units
from temperbook.paths import Project
from temperbook.problems import Problem, nearest
from temperbook.records import model_errors, yaml_reader
from temperbook.records.vocabulary import Quantity, Vocabulary, Word
from temperbook.records.yaml_reader import Document, Location

M = TypeVar("M", bound=BaseModel)
MEND = "write each word as a key, with what it means in braces behind it"


def build(
    model: type[M], data: Any, document: Document, at: Location, found: list[Problem]
) -> M | None:
    """The model of the data at a place of a document; what is wrong with it is added to `found`."""
    try:
        return model.model_validate(data)
    except ValidationError as error:
        found += model_errors.problems(error, document, at, model)
        return None


def vocabulary(project: Project) -> tuple[Vocabulary, list[Problem]]:
    """The closed words of data/vocabulary/, and what is wrong with them."""
    document, entries = _entries(project, "quantities")
    found = list(document.problems)
    quantities = _built(Quantity, entries, document, (), found)
    for name, quantity in quantities.items():
        if quantity.numeric and quantity.unit not in units.known():
            found.append(_unknown_unit(document, name, quantity.unit))
    document, lists = _entries(project, "words")
    found += document.problems
    words = {
        name: _built(Word, entries, document, (name,), found) for name, entries in lists.items()
    }
    return Vocabulary(quantities, words), found


def _entries(project: Project, stem: str) -> tuple[Document, Mapping[str, Any]]:
    path = project.data / "vocabulary" / f"{stem}.yaml"
    document = yaml_reader.read(path, project.shown(path))
    if isinstance(document.data, dict):
        return document, document.data
    if document.data is not None:
        document.problems.append(document.no_mapping(mend=MEND))
    return document, {}


def _built(
    model: type[M], entries: Any, document: Document, at: Location, found: list[Problem]
) -> dict[str, M]:
    if not isinstance(entries, dict):
        if at not in document.refused:
            found.append(document.no_mapping(at, MEND))
        return {}
    built = {}
    for name, data in entries.items():
        one = build(model, data, document, (*at, name), found)
        if one:
            built[name] = one
    return built


def _unknown_unit(document: Document, name: str, unit: str) -> Problem:
    return document.problem(
        (name, "unit"),
        f"{name} has an unknown unit",
        found=unit,
        needed=nearest(unit, units.known()),
        mend="choose one of the units, or add it in generator/temperbook/units.py",
    )
