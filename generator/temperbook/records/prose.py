"""Prose from content/: Markdown parsed once into blocks that pages and print both draw.

`[[address]]` calls a figure, `[[=formula key=value -> output]]` a computed number, `[[in 6 mm]]`
a given
of an example. They stay calls until a view words them, so text of a record is never run as markup.
"""

from __future__ import annotations

import re
import shlex
from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from temperbook.problems import Problem

if TYPE_CHECKING:
    from markdown_it import MarkdownIt
    from markdown_it.rules_inline import StateInline
    from markdown_it.token import Token


@dataclass(frozen=True)
class Inline:
    """A piece of running text. Kinds: text, strong, emphasis, code, link, figure, compute,
    given, break."""

    kind: str
    text: str = ""
    target: str = ""
    children: tuple[Inline, ...] = ()
    line: int = 0


@dataclass(frozen=True)
class Block:
    """A block. Kinds: heading, paragraph, bullets, numbers, item, quote, table, row, cell,
    picture."""

    kind: str
    level: int = 0
    inlines: tuple[Inline, ...] = ()
    children: tuple[Block, ...] = ()
    picture: str = ""
    alt: str = ""
    caption: str = ""
    line: int = 0


@dataclass(frozen=True)
class Prose:
    """One file of content/."""

    file: str
    title: str
    blocks: tuple[Block, ...]

    def inlines(self) -> Iterator[Inline]:
        """Every piece of running text, depth first."""
        for block in walk(self.blocks):
            yield from _walk_inlines(block.inlines)

    def figure_calls(self) -> list[Inline]:
        """Figures called by address."""
        return [i for i in self.inlines() if i.kind == "figure"]

    def links(self) -> list[Inline]:
        """Links to other pages."""
        return [i for i in self.inlines() if i.kind == "link"]


@dataclass(frozen=True)
class Computation:
    """`[[=formula key=value -> output]]`, taken apart."""

    formula: str
    inputs: dict[str, str] = field(default_factory=dict)
    output: str = ""


def walk(blocks: tuple[Block, ...]) -> Iterator[Block]:
    """Blocks and the blocks inside them, depth first."""
    for block in blocks:
        yield block
        yield from walk(block.children)


def _walk_inlines(inlines: tuple[Inline, ...]) -> Iterator[Inline]:
    for inline in inlines:
        yield inline
        yield from _walk_inlines(inline.children)


def parse(text: str, shown: str) -> tuple[Prose, list[Problem]]:
    """The blocks of a Markdown text; a problem for whatever lies outside the subset."""
    tokens = _markdown().parse(text)
    builder = _Builder(shown)
    blocks = builder.blocks(tokens)
    title = ""
    if blocks and blocks[0].kind == "heading" and blocks[0].level == 1:
        title, blocks = builder.title(blocks[0]), blocks[1:]
    else:
        builder.refuse(
            1, "does not begin with its title", "", "# Title", "write the title in the first line"
        )
    return Prose(shown, title, tuple(blocks)), builder.problems


def parse_inline(text: str) -> tuple[Inline, ...]:
    """Running text alone (a sentence of a record) with the same calls; no blocks."""
    tokens = _markdown().parseInline(text)
    return _Builder("").inlines(tokens[0].children or [], 0)


def plain(inlines: tuple[Inline, ...]) -> str:
    """The text without its markup."""
    return "".join(i.text + plain(i.children) for i in inlines)


def computation(call: str) -> Computation | None:
    """`reduction from="round 1.0" to="round 0.4" -> area`, taken apart; None where it has
    another form."""
    left, arrow, output = call.partition("->")
    try:
        words = shlex.split(left)
    except ValueError:
        return None
    if not arrow or not words or any("=" not in word for word in words[1:]):
        return None
    inputs = dict(word.split("=", 1) for word in words[1:])
    return Computation(words[0], inputs, output.strip())


def _markdown() -> MarkdownIt:
    from markdown_it import MarkdownIt  # late: commands that read no prose answer at once

    markdown = MarkdownIt("commonmark", {"html": False}).enable("table")
    markdown.inline.ruler.before("link", "call", _call_rule)
    markdown.validateLink = lambda url: True  # type: ignore[method-assign]
    return markdown


_CALL = re.compile(r"\[\[([^\[\]\n]+)\]\]")


def _call_rule(state: StateInline, silent: bool) -> bool:
    match = _CALL.match(state.src, state.pos)
    if not match:
        return False
    if not silent:
        token = state.push("call", "", 0)
        token.content = match[1].strip()
    state.pos = match.end()
    return True


class _Builder:
    """Walks markdown-it's flat list of tokens and builds blocks."""

    CONTAINERS = {
        "bullet_list": "bullets",
        "ordered_list": "numbers",
        "list_item": "item",
        "blockquote": "quote",
        "table": "table",
        "tr": "row",
    }
    TRANSPARENT = ("thead", "tbody")

    def __init__(self, shown: str) -> None:
        self.shown = shown
        self.problems: list[Problem] = []

    def refuse(self, line: int, text: str, found: str, needed: str, mend: str) -> None:
        self.problems.append(Problem(self.shown, line, text, found, needed, mend))

    def title(self, heading: Block) -> str:
        """The words of the first heading; it is a page's name, so that it can call no number."""
        for inline in _walk_inlines(heading.inlines):
            if inline.kind in ("figure", "compute", "given"):
                self.refuse(
                    heading.line,
                    "its title calls a number",
                    inline.target or inline.text,
                    "a title in words",
                    "call the number in the text below",
                )
        return plain(heading.inlines)

    def blocks(self, tokens: list[Token]) -> list[Block]:
        stack: list[tuple[Token | None, list[Block]]] = [(None, [])]
        for token in tokens:
            name = token.type.rsplit("_", 1)[0]
            if name in self.TRANSPARENT:
                continue
            if token.nesting == 1:
                stack.append((token, []))
            elif token.nesting == -1:
                opened, children = stack.pop()
                assert opened is not None
                stack[-1][1].append(self._close(name, opened, children))
            else:
                stack[-1][1].extend(self._leaf(token))
        return stack[0][1]

    def _close(self, name: str, opened: Token, children: list[Block]) -> Block:
        line = (opened.map or [0])[0] + 1
        if name in self.CONTAINERS:
            return Block(self.CONTAINERS[name], children=tuple(children), line=line)
        inlines = children[0].inlines if children else ()
        if name == "heading":
            return Block("heading", level=int(opened.tag[1]), inlines=inlines, line=line)
        if name in ("th", "td"):
            return Block("cell", level=1 if name == "th" else 0, inlines=inlines, line=line)
        if len(inlines) == 1 and inlines[0].kind == "picture":
            return self._picture(inlines[0], line)
        for inline in inlines:
            if inline.kind == "picture":
                self.refuse(
                    inline.line,
                    "a picture stands inside running text",
                    inline.target,
                    "a paragraph of its own",
                    "put an empty line before and after it",
                )
        return Block("paragraph", inlines=inlines, line=line)

    def _picture(self, inline: Inline, line: int) -> Block:
        kind, _, name = inline.target.partition(":")
        if kind != "picture" or not name:
            self.refuse(
                line,
                "shows a picture that is none of the handbook's own",
                inline.target,
                "picture:name",
                "name one of the drawn pictures; files are not shown",
            )
        alt = plain(inline.children)
        return Block("picture", picture=name, alt=alt, caption=inline.text, line=line)

    def _leaf(self, token: Token) -> list[Block]:
        line = (token.map or [0])[0] + 1
        if token.type == "inline":
            return [Block("inline", inlines=self.inlines(token.children or [], line), line=line)]
        self.refuse(
            line,
            "is a kind of Markdown that the handbook does not use",
            token.type.replace("_", " "),
            "headings, paragraphs, lists, quotes, tables, pictures",
            "say it in one of these",
        )
        return []

    def inlines(self, tokens: list[Token], line: int) -> tuple[Inline, ...]:
        stack: list[tuple[Token | None, list[Inline]]] = [(None, [])]
        for token in tokens:
            if token.nesting == 1:
                stack.append((token, []))
            elif token.nesting == -1:
                opened, children = stack.pop()
                assert opened is not None
                stack[-1][1].append(_wrapped(opened, tuple(children), line))
            else:
                stack[-1][1].append(self._inline(token, line))
                line += token.type == "softbreak"
        return tuple(stack[0][1])

    def _inline(self, token: Token, line: int) -> Inline:
        if token.type in ("softbreak", "hardbreak"):
            return Inline("text", " ")
        if token.type == "call":
            return _call(token.content, line)
        if token.type == "image":
            return Inline(
                "picture",
                str(token.attrs.get("title", "")),
                str(token.attrs["src"]),
                self.inlines(token.children or [], line),
                line,
            )
        kind = "code" if token.type == "code_inline" else "text"
        return Inline(kind, token.content, line=line)


def _wrapped(opened: Token, children: tuple[Inline, ...], line: int) -> Inline:
    if opened.type == "link_open":
        return Inline("link", target=str(opened.attrs["href"]), children=children, line=line)
    kind = "strong" if opened.type == "strong_open" else "emphasis"
    return Inline(kind, children=children, line=line)


def _call(content: str, line: int) -> Inline:
    if content.startswith("="):
        return Inline("compute", target=content[1:].strip(), line=line)
    if content.startswith("in "):
        return Inline("given", content[3:].strip(), line=line)
    return Inline("figure", target=content, line=line)
