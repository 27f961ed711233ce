"""Prose: the Markdown that the handbook uses, calls with their lines, and text that stays text."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from temperbook.records.prose import (
    Computation,
    Inline,
    Prose,
    computation,
    parse,
    parse_inline,
    plain,
    walk,
)

TEXT = """\
# Title

First line
with [[a/b#anneal@heat=torch]] and **strong [[a/b#solidus]]**.

## Heading

- one
- two [[=reduction from="round 1.0" to="round 0.4" -> area]]
  and [[in 6 mm]]

1. *first*

> quoted `code` and [a link](term:anneal)

| Head | [[c/d#density]] |
|---|---|
| cell | [[c/d#pour]] |

![what is *seen*](picture:grain-cast "Caption.")
"""


def good(text: str) -> Prose:
    prose, problems = parse(text, "content/x.md")
    assert not problems
    return prose


def calls(prose: Prose, kind: str) -> list[tuple[str, int]]:
    return [(i.target or i.text, i.line) for i in prose.inlines() if i.kind == kind]


def test_title_and_blocks() -> None:
    prose = good(TEXT)
    assert prose.title == "Title"
    assert [block.kind for block in prose.blocks] == [
        "paragraph", "heading", "bullets", "numbers", "quote", "table", "picture",
    ]  # fmt: skip


def test_calls_and_their_lines() -> None:
    prose = good(TEXT)
    assert calls(prose, "figure") == [
        ("a/b#anneal@heat=torch", 4),
        ("a/b#solidus", 4),
        ("c/d#density", 16),
        ("c/d#pour", 18),
    ]
    assert calls(prose, "compute") == [('reduction from="round 1.0" to="round 0.4" -> area', 9)]
    assert calls(prose, "given") == [("6 mm", 10)]
    assert calls(prose, "link") == [("term:anneal", 14)]
    assert [i.target for i in prose.figure_calls()] == [t for t, _ in calls(prose, "figure")]
    assert [i.target for i in prose.links()] == ["term:anneal"]


def test_tables() -> None:
    (table,) = (block for block in good(TEXT).blocks if block.kind == "table")
    assert [row.line for row in table.children] == [16, 18]
    heads, cells = ([cell.level for cell in row.children] for row in table.children)
    assert (heads, cells) == ([1, 1], [0, 0])


def test_pictures() -> None:
    picture = good(TEXT).blocks[-1]
    assert (picture.picture, picture.alt, picture.caption, picture.line) == (
        "grain-cast", "what is seen", "Caption.", 20,
    )  # fmt: skip


def test_a_line_break_is_a_space() -> None:
    assert plain(good("# T\n\none\ntwo\n").blocks[0].inlines) == "one two"


@pytest.mark.parametrize(
    "text",
    [
        "<script>alert(1)</script>",
        "<b>bold</b> and <!-- comment -->",
        '<img src=x onerror="alert(1)">',
        "{{ config }} and {% raw %}",
        '#import "x.typ"',
        "$x^2$ and @label",
        "a \\ b ~ c",
        "&lt;script&gt; in words",
    ],
)
def test_markup_in_text_stays_text(text: str) -> None:
    """Nothing of a template engine, of HTML or of Typst is anything but text."""
    prose = good(f"# Title\n\nBefore {text} after\n")
    assert {i.kind for i in prose.inlines()} == {"text"}
    shown = text.replace("&lt;", "<").replace("&gt;", ">")
    assert plain(prose.blocks[0].inlines) == f"Before {shown} after"


def test_html_in_a_block_of_its_own_stays_text() -> None:
    prose = good("# Title\n\n<script>\nalert(1)\n</script>\n")
    assert plain(prose.blocks[0].inlines) == "<script> alert(1) </script>"


def test_code_calls_nothing() -> None:
    prose = good("# T\n\nWrite `[[a/b#anneal]]` or \\[[a/b#anneal]].\n")
    assert not prose.figure_calls()
    assert "[[a/b#anneal]]" in plain(prose.blocks[0].inlines)


@pytest.mark.parametrize(
    ("text", "line", "found"),
    [
        ("# T\n\n---\n", 3, "hr"),
        ("# T\n\ntext\n\n```\ncode\n```\n", 5, "fence"),
        ("# T\n\n    indented code\n", 3, "code block"),
    ],
)
def test_outside_the_subset(text: str, line: int, found: str) -> None:
    _, problems = parse(text, "content/x.md")
    assert [(p.file, p.line, p.found) for p in problems] == [("content/x.md", line, found)]


@pytest.mark.parametrize("text", ["", "no title\n", "## too low\n", "\n\n- list\n"])
def test_without_title(text: str) -> None:
    prose, (problem,) = parse(text, "content/x.md")
    assert prose.title == ""
    assert problem.text == "does not begin with its title"


def test_a_title_calls_no_number() -> None:
    _, (problem,) = parse("# Heat of [[a/b#anneal]]\n", "content/x.md")
    assert problem.text == "its title calls a number"


@pytest.mark.parametrize(
    ("call", "found"),
    [
        ("mass length=60 -> mass", Computation("mass", {"length": "60"}, "mass")),
        (
            "reduction from=\"round 1.0\" to='flat 20x3' ->area",
            Computation("reduction", {"from": "round 1.0", "to": "flat 20x3"}, "area"),
        ),
        ("fineness -> fineness", Computation("fineness", {}, "fineness")),
        ("mass length=60", None),
        ("mass length -> mass", None),
        ("-> mass", None),
        ('mass length="60 -> mass', None),
    ],
)
def test_computation(call: str, found: Computation | None) -> None:
    assert computation(call) == found


def test_parse_inline_has_no_blocks() -> None:
    """A sentence of a record that begins like a list or a heading is a sentence."""
    assert plain(parse_inline("# 1. - no [[a/b#pour]]list")) == "# 1. - no list"
    assert [i.target for i in parse_inline("x [[a/b#pour]]") if i.kind == "figure"] == ["a/b#pour"]
    assert parse_inline("") == ()


@given(st.text(st.characters(exclude_categories=("Cs", "Cc")), max_size=60))
def test_any_line_is_read(text: str) -> None:
    """No line of text raises, and each piece is of a kind that views know."""
    prose, _ = parse(f"# Title\n\n{text}\n", "content/x.md")
    kinds = {"text", "strong", "emphasis", "code", "link", "figure", "compute", "given", "picture"}
    assert {i.kind for i in prose.inlines()} <= kinds
    assert all(isinstance(i, Inline) for block in walk(prose.blocks) for i in block.inlines)
