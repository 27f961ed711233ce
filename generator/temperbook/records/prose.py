"""Prose from content/: Markdown parsed once into blocks that pages and print both draw.

`[[address]]` calls a figure, `[[=formula key=value -> output]]` a computed number, `[[in 6 mm]]` a given
of an example. They stay calls until a view words them, so text of a record is never run as markup.
"""

from __future__ import annotations

import re
import shlex
from collections.abc import Iterator
from dataclasses import dataclass, field

from markdown_it import MarkdownIt
from markdown_it.rules_inline import StateInline
from markdown_it.token import Token

from temperbook.paths import Project
from temperbook.problems import Problem


@dataclass(frozen=True)
class Inline:
    """A piece of running text. Kinds: text, strong, emphasis, code, link, figure, compute, given, break."""

    kind: str
    text: str = ""
    target: str = ""
    children: tuple[Inline, ...] = ()
    line: int = 0


@dataclass(frozen=True)
class Block:
    """A block. Kinds: heading, paragraph, bullets, numbers, item, quote, table, row, cell, picture."""

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


def read_folder(project: Project) -> tuple[dict[str, Prose], list[Problem]]:
    """All prose by its path in content/ without `.md`, and what is wrong with it."""
    found: dict[str, Prose] = {}
    problems: list[Problem] = []
    for path in sorted(project.content.rglob("*.md")):
        shown = project.shown(path)
        try:
            text = path.read_text(encoding="utf-8")
        except (OSError, UnicodeDecodeError) as error:
            problems.append(
                Problem(
                    shown,
                    0,
                    "cannot be read",
                    found=str(error),
                    needed="text in UTF-8",
                    mend="save it again as UTF-8",
                )
            )
            continue
        prose, more = parse(text, shown)
        problems += more
        found[path.relative_to(project.content).with_suffix("").as_posix()] = prose
    return found, problems


def parse(text: str, shown: str) -> tuple[Prose, list[Problem]]:
    """The blocks of a Markdown text; a problem for whatever lies outside the subset."""
    tokens = _markdown().parse(text)
    builder = _Builder(shown)
    blocks = builder.blocks(tokens)
    title = ""
    if blocks and blocks[0].kind == "heading" and blocks[0].level == 1:
        title, blocks = plain(blocks[0].inlines), blocks[1:]
    else:
        builder.problems.append(
            Problem(
                shown,
                1,
                "does not begin with its title",
                needed="# Title",
                mend="write the title in the first line",
            )
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
    """`reduction from="round 1.0" to="round 0.4" -> area`, taken apart; None where it has another form."""
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
            picture = inlines[0]
            return Block(
                "picture",
                picture=picture.target.removeprefix("picture:"),
                alt=plain(picture.children),
                caption=picture.text,
                line=line,
            )
        return Block("paragraph", inlines=inlines, line=line)

    def _leaf(self, token: Token) -> list[Block]:
        line = (token.map or [0])[0] + 1
        if token.type == "inline":
            return [Block("inline", inlines=self.inlines(token.children or [], line), line=line)]
        self.problems.append(
            Problem(
                self.shown,
                line,
                "is a kind of Markdown that the handbook does not use",
                found=token.type.replace("_", " "),
                needed="headings, paragraphs, lists, quotes, tables, pictures",
                mend="say it in one of these",
            )
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
