"""Describes the exported files as a Frictionless data package: every column with its type."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from temperbook.derive.handbook import Handbook
from temperbook.views import exported

LICENCE = {
    "name": "CC-BY-4.0",
    "title": "Creative Commons Attribution 4.0",
    "path": "https://creativecommons.org/licenses/by/4.0/",
}
# Columns that are numbers; all others are text, empty where there is none.
NUMBERS = ("value", "low", "high")
WHOLE = ("year",)
DESCRIBED = {
    "address": "Record, quantity and basis keys: the name by which prose and tests call the figure",
    "record": "The record that bears the figure, or that the row speaks of",
    "quantity": "A quantity of quantities.csv",
    "value": "A single number, in the unit",
    "low": "Lower end of a range, or at least",
    "high": "Upper end of a range, or at most",
    "unit": "Unit of the number",
    "of": "What a reduction is counted on",
    "how": "How the figure is known; see words.csv",
    "from": "Rows of evidence.csv that it rests on, with spaces between them",
    "grade": "Best grade among those rows, or the row's own: A read itself, B maker's data sheet, "
    "C second hand, D workshop or trade page",
    "printed_value": "Exactly as the source prints it",
    "locator": "Where in the work it stands",
    "read": "Whether the work itself was read",
    "source": "The work; see sources.csv",
}
TITLES = {
    "figures": "Every figure as the handbook states it",
    "evidence": "Every row of evidence as its source prints it",
    "sources": "Every work that figures come from",
    "quantities": "What each quantity is, its unit and the basis that it needs",
    "words": "The closed words of each basis key",
}


def described(handbook: Handbook, evidence: Sequence[str]) -> dict[str, Any]:
    """The package of a handbook. evidence: the columns of evidence.csv."""
    edition = handbook.library.edition
    source = _foreign("source", "sources", "id")
    quantity = _foreign("quantity", "quantities", "quantity")
    return {
        "profile": "data-package",
        "name": "temperbook",
        "title": "Temperbook: figures of alloys with their evidence",
        "version": edition.date,
        "created": f"{edition.date}T00:00:00Z",
        "licenses": [LICENCE],
        "resources": [
            _table("figures", exported.FIGURE, "address", [quantity]),
            _table("evidence", evidence, "id", [source, quantity]),
            _table("sources", exported.SOURCE, "id", []),
            _table("quantities", exported.QUANTITY, "quantity", []),
            _table("words", exported.WORD, ["vocabulary", "word"], []),
            *(_records(name) for name in ("alloys", "solders", "faults", "cautions")),
        ],
    }


def _records(name: str) -> dict[str, Any]:
    return {
        "name": name,
        "type": "json",
        "path": f"{name}.json",
        "scheme": "file",
        "format": "json",
        "mediatype": "application/json",
        "encoding": "utf-8",
        "title": f"All {name} with their figures, statements and provenance",
    }


def _table(
    name: str, columns: Sequence[str], key: str | list[str], foreign: list[dict[str, Any]]
) -> dict[str, Any]:
    schema: dict[str, Any] = {
        "fields": [_field(column) for column in columns],
        "primaryKey": [key] if isinstance(key, str) else key,
        "missingValues": [""],
    }
    if foreign:
        schema["foreignKeys"] = foreign
    return {
        "name": name,
        "type": "table",
        "path": f"{name}.csv",
        "scheme": "file",
        "format": "csv",
        "mediatype": "text/csv",
        "encoding": "utf-8",
        "title": TITLES[name],
        "dialect": {"csv": {"lineTerminator": "\r\n"}},
        "schema": schema,
    }


def _field(column: str) -> dict[str, str]:
    kind = "number" if column in NUMBERS else "integer" if column in WHOLE else "string"
    field = {"name": column, "type": kind}
    if column in DESCRIBED:
        field["description"] = DESCRIBED[column]
    return field


def _foreign(column: str, resource: str, field: str) -> dict[str, Any]:
    return {"fields": [column], "reference": {"resource": resource, "fields": [field]}}
