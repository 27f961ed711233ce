"""Prose with its numbers said: calls become words with a mark, links become addresses."""

from __future__ import annotations

from dataclasses import dataclass, replace

from temperbook.derive import computing
from temperbook.derive.handbook import Handbook
from temperbook.records import prose
from temperbook.records.prose import Block, Inline
from temperbook.views import formatting, routes
from temperbook.views.formatting import SPACE, number, with_unit

# Decimals of a computed number by its unit.
DECIMALS = {"percent": 0, "mm": 0, "g": 1, "g/cm3": 2, "per-mille": 0, "times": 2, "": 2}


@dataclass(frozen=True)
class Said:
    """A piece of running text as a page draws it; kinds: text, strong, emphasis, code, link,
    number."""

    kind: str
    text: str = ""
    href: str = ""
    mark: str = ""
    title: str = ""
    children: tuple[Said, ...] = ()


@dataclass(frozen=True)
class Passage:
    """A block as a page draws it, with the same kinds as prose blocks."""

    kind: str
    level: int = 0
    said: tuple[Said, ...] = ()
    children: tuple[Passage, ...] = ()
    picture: str = ""
    alt: str = ""
    caption: str = ""
    anchor: str = ""


def passages(text: prose.Prose, handbook: Handbook) -> list[Passage]:
    """A file of prose, said."""
    return [_passage(block, handbook) for block in text.blocks]


def sentence(text: str, handbook: Handbook) -> tuple[Said, ...]:
    """Running text of a record or a pack with the same calls, said."""
    return tuple(said(inline, handbook) for inline in prose.parse_inline(text))


def _passage(block: Block, handbook: Handbook) -> Passage:
    return Passage(
        kind=block.kind,
        level=block.level,
        said=tuple(said(inline, handbook) for inline in block.inlines),
        children=tuple(_passage(child, handbook) for child in block.children),
        picture=block.picture,
        alt=block.alt,
        caption=block.caption,
        anchor=routes.slug(prose.plain(block.inlines)) if block.kind == "heading" else "",
    )


def said(inline: Inline, handbook: Handbook) -> Said:
    """One piece of running text, said."""
    if inline.kind == "figure":
        return _figure(inline.target, handbook)
    if inline.kind == "compute":
        return _computed(inline.target, handbook)
    if inline.kind == "given":
        return Said("number", _spaced(inline.text), title="a given of this example")
    children = tuple(said(child, handbook) for child in inline.children)
    if inline.kind == "link":
        href = routes.linked(inline.target, handbook.library)
        return Said("link", href=href, children=children)
    return Said(inline.kind, inline.text, children=children)


def _figure(call: str, handbook: Handbook) -> Said:
    called = handbook.figure(call)
    shown = formatting.shown(called.figure, called.quantity, handbook.library)
    sources = [handbook.library.sources[s].by for s in shown.sources]
    title = "; ".join(part for part in (shown.how, formatting.listed(sources), shown.basis) if part)
    href = routes.figure(called.address, handbook.library)
    return Said("number", shown.text, href=href, mark=shown.mark, title=title)


def _computed(target: str, handbook: Handbook) -> Said:
    call = prose.computation(target)
    assert call is not None
    outputs = computing.compute(call.formula, call.inputs, handbook.library)
    text = output(call.formula, call.output, outputs[call.output])
    inputs = ", ".join(f"{key} {word}" for key, word in call.inputs.items())
    title = f"computed: {call.formula}, {inputs}"
    return Said("number", text, f"formulas/#{call.formula}", "computed", title)


def output(formula: str, name: str, value: float) -> str:
    """A computed number with its unit, rounded for reading."""
    unit = computing.unit_of(formula, name)
    decimals = DECIMALS.get(unit, 1)
    if unit == "percent" and abs(value - round(value)) > 0.25:
        decimals = 1
    return with_unit(number(value, decimals), unit)


def _spaced(text: str) -> str:
    """`6 mm` with a space that does not break."""
    return text.replace(" ", SPACE)


def without_links(passage: Passage) -> Passage:
    """The same passage with its links as plain text, for paper."""
    return replace(
        passage,
        said=tuple(_unlinked(s) for s in passage.said),
        children=tuple(without_links(child) for child in passage.children),
    )


def _unlinked(piece: Said) -> Said:
    children = tuple(_unlinked(child) for child in piece.children)
    kind = "group" if piece.kind == "link" else piece.kind
    return replace(piece, kind=kind, href="", children=children)
