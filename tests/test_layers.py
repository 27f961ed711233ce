"""The order of the layers, the libraries of each, and the size of modules and functions.

A module imports only from rows above it (DEVELOPERS.md shows the order), so that whoever knows the
line finds each thing without a search.
"""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

import temperbook

PACKAGE = Path(temperbook.__file__).parent
MODULES = sorted(PACKAGE.rglob("*.py"))
# Layer -> the layers that it may import from, besides its own. checks and views do not know each
# other.
LEAVES = {"problems", "units", "paths"}
MAY_IMPORT = {
    **{leaf: set() for leaf in LEAVES},
    "records": LEAVES,
    "metal": set(),
    "derive": LEAVES | {"records", "metal"},
    "checks": LEAVES | {"records", "metal", "derive"},
    "views": LEAVES | {"records", "metal", "derive"},
    "drawing": LEAVES | {"records", "metal", "derive", "views"},
    "outputs": LEAVES | {"records", "metal", "derive", "views", "drawing", "checks"},
    "commands": LEAVES | {"records", "metal", "derive", "views", "drawing", "checks", "outputs"},
    "cli": {"commands"},
    "__main__": {"cli"},
}
# Library -> where it may be imported.
LIBRARIES = {
    "yaml": ("records/",),
    "pydantic": ("records/",),
    "pydantic_core": ("records/",),
    "markdown_it": ("records/",),
    "pandas": ("derive/", "outputs/tables"),
    "pint": ("units.py",),
    "jinja2": ("outputs/",),
    "markupsafe": ("outputs/",),
    "mkdocs": ("outputs/site/", "commands/build.py", "commands/serve.py"),
    "typst": ("outputs/typeset/",),
    "segno": ("drawing/",),
    "fontTools": ("drawing/",),
    "rich": ("commands/",),
    "click": ("commands/", "cli.py"),
}
# MkDocs is asked to build and to serve by two commands: its entry points are functions, and a layer
# that did nothing but pass the call on would say less than the call.
MKDOCS_CALLERS = ["commands/build.py", "commands/serve.py"]

MOST_LINES = 310
MOST_FUNCTION_LINES = 60
MOST_NUMBERS = 12
# Functions and modules that are longer, and why. Sorted; an entry that is no longer needed fails.
LONG_FUNCTIONS: dict[str, str] = {}
LONG_MODULES: dict[str, str] = {}
# Literals with many numbers, by module and what holds them, and why they are no data of the
# subject.
NUMERIC_TABLES = {
    "checks/number_within_physical_sense.py SENSE": "limits that find slips, by unit",
    "drawing/ingot.py HOLLOWS": "outlines of two drawn hollows, mm of the picture",
    "drawing/ingot.py SURFACE": "outline of the drawn pipe, mm of the picture",
}


def name(path: Path) -> str:
    return path.relative_to(PACKAGE).as_posix()


def layer(path: Path) -> str:
    return path.relative_to(PACKAGE).parts[0].removesuffix(".py")


def imports(path: Path) -> Iterator[tuple[str, int]]:
    """Every module that a file imports, also inside functions and for types alone."""
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            yield from ((alias.name, node.lineno) for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, f"{name(path)}:{node.lineno}: a relative import"
            yield from ((f"{node.module}.{alias.name}", node.lineno) for alias in node.names)


@pytest.mark.parametrize("path", MODULES, ids=name)
def test_imports_come_from_above(path: Path) -> None:
    if name(path) == "__init__.py":
        assert not list(imports(path))
        return
    own = layer(path)
    for imported, line in imports(path):
        parts = imported.split(".")
        if parts[0] == "temperbook":
            other = parts[1]
            assert other == own or other in MAY_IMPORT[own], (
                f"{name(path)}:{line}: {own} <- {other}"
            )


def test_every_layer_is_known() -> None:
    assert {layer(path) for path in MODULES} == MAY_IMPORT.keys() | {"__init__"}
    # Each row lies above the next: a layer that others may import imports none of them.
    for own, above in MAY_IMPORT.items():
        assert all(own not in MAY_IMPORT[other] for other in above), own


@pytest.mark.parametrize("library", LIBRARIES)
def test_libraries_stay_in_their_layer(library: str) -> None:
    found = {
        name(path)
        for path in MODULES
        for imported, _ in imports(path)
        if imported.split(".")[0] == library
    }
    strangers = sorted(n for n in found if not n.startswith(LIBRARIES[library]))
    assert not strangers
    if library == "mkdocs":
        assert sorted(n for n in found if n.startswith("commands/")) == MKDOCS_CALLERS


def test_nothing_reads_the_clock_or_the_network() -> None:
    """The edition's date is data; a build is the same tomorrow and without a line.

    Chance has a seed.
    """
    libraries = ("time", "socket", "urllib.request", "http", "requests", "httpx", "secrets", "uuid")
    calls = ("now", "today", "utcnow", "time", "urlopen", "random", "randint", "choice", "shuffle")
    found = []
    for path in MODULES:
        found += [f"{name(path)}:{n}: {i}" for i, n in imports(path) if i.startswith(libraries)]
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute):
                owner = getattr(node.func.value, "id", "")
                if owner in ("random", "datetime", "date", "time") and node.func.attr in calls:
                    found.append(f"{name(path)}:{node.lineno}: {owner}.{node.func.attr}()")
                if node.func.attr == "Random" and not node.args:
                    found.append(f"{name(path)}:{node.lineno}: chance without a seed")
    assert not found


def test_modules_are_short() -> None:
    long = {
        name(path): lines
        for path in MODULES
        if (lines := len(path.read_text(encoding="utf-8").splitlines())) > MOST_LINES
    }
    assert long.keys() == LONG_MODULES.keys(), long


def test_functions_are_short() -> None:
    long = {
        f"{name(path)} {node.name}": lines
        for path in MODULES
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef)
        and (lines := (node.end_lineno or 0) - node.lineno + 1) > MOST_FUNCTION_LINES
    }
    assert long.keys() == LONG_FUNCTIONS.keys(), long
    assert list(LONG_FUNCTIONS) == sorted(LONG_FUNCTIONS)


def test_numbers_of_the_subject_stand_in_data() -> None:
    """A table of numbers in the code would be data without a source."""
    found = {table for path in MODULES for table in _tables(path)}
    assert found == NUMERIC_TABLES.keys()
    assert list(NUMERIC_TABLES) == sorted(NUMERIC_TABLES)


def _tables(path: Path) -> Iterator[str]:
    """Statements that hold a literal with many bare numbers, by the name that they give it, else by
    line.
    """
    for statement in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if not isinstance(statement, ast.stmt) or hasattr(statement, "body"):
            continue
        if any(_numbers(node) > MOST_NUMBERS for node in ast.walk(statement)):
            targets = getattr(statement, "targets", [getattr(statement, "target", None)])
            yield f"{name(path)} {getattr(targets[0], 'id', statement.lineno)}"


def _numbers(node: ast.AST) -> int:
    """Numbers that stand bare in a literal or in the literals inside it: not in a sum, nor in a
    call.
    """
    if isinstance(node, ast.Constant):
        return type(node.value) in (int, float)
    if isinstance(node, ast.List | ast.Tuple | ast.Set):
        return sum(map(_numbers, node.elts))
    if isinstance(node, ast.Dict):
        return sum(_numbers(part) for part in (*node.keys, *node.values) if part)
    if isinstance(node, ast.UnaryOp):
        return _numbers(node.operand)
    return 0
