"""Turns pydantic's errors into problems with file, line, what is allowed and how to mend it."""

from __future__ import annotations

import re
from typing import Any, get_args, get_origin

from pydantic import BaseModel, ValidationError
from pydantic_core import ErrorDetails

from temperbook.problems import Problem, nearest
from temperbook.records.yaml_reader import Document, Location, shown_location

# pydantic's error type -> what was needed there. `{...}` are its own context values.
NEEDED = {
    "string_type": "a text",
    "string_too_short": "a text that is not empty",
    "string_too_long": "at most {max_length} characters",
    "float_type": "a number",
    "int_type": "a whole number",
    "bool_type": "true or false",
    "list_type": "a list (`- item` lines or [a, b])",
    "dict_type": "`key: value` lines",
    "model_type": "`key: value` lines",
}
MEND = {
    "string_type": 'put it in double quotes if the text is meant: "{found}"',
    "string_too_short": "write it, or delete the key",
    "float_type": "write the number alone, without quotes; its unit stands in `unit`",
    "int_type": "write the number alone, without quotes",
    "bool_type": "write true or false, without quotes",
    "list_type": "put `- ` before it, or square brackets around it",
    "dict_type": "write its keys below it, indented",
    "model_type": "write its keys below it, indented",
    "string_too_long": "say it shorter",
}


def problems(
    error: ValidationError, document: Document, at: Location, model: type[BaseModel]
) -> list[Problem]:
    """One problem for each of pydantic's errors, at the line of its place; `at` is the model's own.

    What the reader has refused already is left out.
    """
    return [
        _problem(detail, document, at, model)
        for detail in error.errors(include_url=False)
        if (*at, *detail["loc"]) not in document.refused
    ]


def _problem(
    detail: ErrorDetails, document: Document, at: Location, model: type[BaseModel]
) -> Problem:
    location = (*at, *detail["loc"])
    kind, found = detail["type"], detail["input"]
    place = shown_location(location)
    if kind == "extra_forbidden":
        return document.problem(
            location,
            f"unknown key `{place}`",
            found=str(location[-1]),
            needed=nearest(str(location[-1]), allowed_keys(model, detail["loc"][:-1])),
            mend="correct the key or delete it",
        )
    if kind == "missing":
        return document.problem(
            location[:-1],
            f"{shown_location(location[:-1])} lacks the key `{location[-1]}`",
            needed=f"{location[-1]}: ...",
            mend="add it; DEVELOPERS.md shows a complete record",
        )
    if kind == "string_pattern_mismatch":
        pattern = detail.get("ctx", {}).get("pattern", "")
        return document.problem(
            location,
            f"{place} has not the form that is needed",
            found=str(found),
            needed=_form(str(pattern)),
            mend="write it in that form",
        )
    if kind == "literal_error":
        words = re.findall(r"'([^']*)'", str(detail["ctx"]["expected"]))
        return document.problem(
            location,
            f"{place} is no known word",
            found=_short(found),
            needed=nearest(str(found), words),
            mend="choose one of the words",
        )
    return document.problem(
        location,
        f"{place} is not what is needed there",
        found=_short(found),
        needed=NEEDED.get(kind, detail["msg"]).format(**detail.get("ctx", {})),
        mend=MEND.get(kind, "correct the value").format(found=found),
    )


def _form(pattern: str) -> str:
    if "http" in pattern:
        return "an address that begins with http:// or https:// and has no spaces"
    if r"\d{4}" in pattern:
        return "a date such as 2026-11-25"
    return "letters, digits and single - / . between them"


def _short(found: Any) -> str:
    """What was found, as it may stand in the file."""
    if isinstance(found, dict):
        return "`key: value` lines"
    if isinstance(found, list):
        return "a list"
    text = str(found).lower() if isinstance(found, bool) else str(found)
    text = text if len(text) <= 80 else text[:77] + "..."
    return f'"{text}"' if isinstance(found, str) else text


def allowed_keys(model: type[BaseModel], location: Location) -> list[str]:
    """The keys that a model allows at a place in it."""
    inner: Any = model
    for part in location:
        inner = _step(inner, part)
    found = _model_in(inner)
    return [f.alias or name for name, f in found.model_fields.items()] if found else []


def _step(annotation: Any, part: str | int) -> Any:
    model = _model_in(annotation)
    if model and isinstance(part, str):
        for name, info in model.model_fields.items():
            if part in (name, info.alias):
                return info.annotation
    origin, args = get_origin(annotation), get_args(annotation)
    if origin is list:
        return args[0]
    if origin is dict:
        return args[1]
    return next((a for a in args if get_origin(a) in (list, dict)), annotation)


def _model_in(annotation: Any) -> type[BaseModel] | None:
    candidates = (annotation, *get_args(annotation))
    return next((c for c in candidates if isinstance(c, type) and issubclass(c, BaseModel)), None)
