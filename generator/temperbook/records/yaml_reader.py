"""Reads one YAML file into plain data that still knows the line of every key and item.

PyYAML's own constructors lose the lines, take the last of two equal keys, read `20e-6` as text and
`no` as a truth value; this one composes nodes with marks and says so instead. Aliases are refused:
a record says each thing where it stands.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import yaml

from temperbook.problems import Problem
from temperbook.records import text_file

Loader = getattr(yaml, "CSafeLoader", yaml.SafeLoader)
Location = tuple[str | int, ...]

_EXPONENT = re.compile(r"[-+]?\d+(\.\d*)?[eE][-+]?\d+")
_TAG = "tag:yaml.org,2002:"


@dataclass
class Document:
    """The data of one file; `lines` maps each location in it to a line number from 1.

    `refused`: locations whose value the reader itself has reported; no one reports it again.
    """

    file: str
    data: Any = None
    lines: dict[Location, int] = field(default_factory=dict)
    problems: list[Problem] = field(default_factory=list)
    refused: set[Location] = field(default_factory=set)

    def line(self, location: Location = ()) -> int:
        """The line of a location, or of the nearest thing around it."""
        for length in range(len(location), -1, -1):
            found = self.lines.get(location[:length])
            if found:
                return found
        return 1

    def problem(self, location: Location, text: str, **more: str) -> Problem:
        """A problem at a location of this document."""
        return Problem(self.file, self.line(location), text, **more)

    def no_mapping(self, location: Location = (), mend: str = "begin with `id: ...`") -> Problem:
        """The problem of a text or list that stands where keys are due."""
        given = self.data
        for part in location:
            given = given[part]
        return self.problem(
            location,
            f"{shown_location(location)} has no keys",
            found="a list" if isinstance(given, list) else f"{given!s:.60}",
            needed="`key: value` lines",
            mend=mend,
        )

    def refuse(self, location: Location, text: str, **more: str) -> None:
        """Reports a value that YAML reads as something else than its writer meant."""
        self.refused.add(location)
        self.problems.append(self.problem(location, f"{shown_location(location)} {text}", **more))


def read(path: Path, shown: str) -> Document:
    """The document in the file at `path`; whatever is wrong with it stands in its problems."""
    document = Document(shown)
    text, unreadable = text_file.read(path, shown)
    if unreadable:
        document.problems.append(unreadable)
        return document
    try:
        node = yaml.compose(text, Loader=Loader)
        if node is None:
            document.problems.append(_empty(shown))
        else:
            document.data = _construct(node, (), document, set())
    except yaml.YAMLError as error:
        document.problems.append(_broken(shown, text, error))
    except RecursionError:
        document.problems.append(_too_deep(shown))
    return document


def _empty(shown: str) -> Problem:
    return Problem(shown, 1, "the file is empty", needed="a record", mend="write it or delete it")


def _too_deep(shown: str) -> Problem:
    return Problem(
        shown,
        1,
        "is nested too deep",
        needed="at most a few levels of brackets or indents",
        mend="look for brackets that were never closed",
    )


def _broken(shown: str, text: str, error: yaml.YAMLError) -> Problem:
    mark = getattr(error, "problem_mark", None)
    line = mark.line + 1 if mark else 0
    if isinstance(error, yaml.reader.ReaderError):
        line = text.encode()[: error.position].count(b"\n") + 1
    said = getattr(error, "problem", None) or str(error).splitlines()[0]
    return Problem(
        shown,
        line,
        "is not YAML from here on",
        found=said,
        needed="`key: value` lines, items with `- `, texts with a colon or # in double quotes",
        mend="look at this line and the one before: indent, quotes, brackets",
    )


def _construct(node: Any, at: Location, document: Document, known: set[int]) -> Any:
    document.lines.setdefault(at, node.start_mark.line + 1)
    if id(node) in known:
        document.refuse(
            at,
            "is an alias of another place",
            needed="the value itself",
            mend="write it out; records use no anchors (&) and aliases (*)",
        )
        return None
    known.add(id(node))
    if isinstance(node, yaml.MappingNode):
        return dict(_entries(node, at, document, known))
    if isinstance(node, yaml.SequenceNode):
        return [_construct(item, (*at, i), document, known) for i, item in enumerate(node.value)]
    return _scalar(node, at, document)


def _entries(
    node: Any, at: Location, document: Document, known: set[int]
) -> Iterator[tuple[str, Any]]:
    seen: dict[str, int] = {}
    for key_node, value_node in node.value:
        line = key_node.start_mark.line + 1
        if not isinstance(key_node, yaml.ScalarNode):
            document.problems.append(_no_key(document.file, line))
            continue
        key = str(key_node.value)
        if key in seen:
            document.problems.append(_twice(document.file, line, key, seen[key]))
            continue
        seen[key] = line
        document.lines[(*at, key)] = line
        yield key, _construct(value_node, (*at, key), document, known)


def _no_key(file: str, line: int) -> Problem:
    return Problem(
        file,
        line,
        "a bracket stands where a key is due",
        needed="`key: value`",
        mend="put a text that begins with { or [ in double quotes; write single brackets",
    )


def _twice(file: str, line: int, key: str, first: int) -> Problem:
    return Problem(
        file,
        line,
        f"key `{key}` stands twice",
        found=f"first in line {first}",
        needed="each key once",
        mend="join the two or delete one",
    )


def _scalar(node: Any, at: Location, document: Document) -> Any:
    text = node.value
    kind = node.tag.removeprefix(_TAG)
    if kind == "bool":
        if text.lower() not in ("true", "false"):
            document.refuse(
                at,
                "is a truth value to YAML, not a word",
                found=text,
                needed="a word, or true or false",
                mend=f'put it in quotes if the word is meant: "{text}"',
            )
        return text.lower() == "true"
    if kind == "null":
        document.refuse(at, "has no value", needed="a value", mend="write one or delete the key")
        return None
    if kind in ("str", "float") and not node.style and _EXPONENT.fullmatch(text):
        document.refuse(
            at,
            "is written with an exponent, which YAML may take for text",
            found=text,
            needed=f"a number written out, such as {_written_out(text)}",
            mend="write it without e, or in another unit",
        )
        return float(text)
    return _number(kind, text)


def _number(kind: str, text: str) -> Any:
    if kind == "int" and re.fullmatch(r"[-+]?(0|[1-9]\d*)", text):
        return int(text)
    if kind == "float" and re.fullmatch(r"[-+]?\d+\.\d*|[-+]?\.\d+", text):
        return float(text)
    return text


def _written_out(text: str) -> str:
    return f"{float(text):.12f}".rstrip("0").rstrip(".")


def shown_location(location: Location) -> str:
    """`figures.solidus[0].value`, as messages name a place in a record."""
    text = ""
    for part in location:
        text += f"[{part}]" if isinstance(part, int) else f".{part}" if text else str(part)
    return text or "the record"
