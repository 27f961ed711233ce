"""Shapes as SVG for pages. Classes carry the palette, so that one picture follows light and
dark."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from html import escape
from itertools import groupby

from temperbook.drawing.lettering import cap_share
from temperbook.drawing.shapes import Circle, Glow, Line, Picture, Polygon, Rect, Shape, Text


def picture(drawn: Picture, ident: str = "p", alt: str = "") -> str:
    """An inline `<svg>` of a picture; `ident` keeps the ids of two pictures on one page apart."""
    body = "".join(_drawn(drawn.shapes, ident))
    label = escape(alt or drawn.alt, quote=True)
    return (
        f'<svg class="drawn" viewBox="0 0 {_n(drawn.width)} {_n(drawn.height)}" '
        f'role="img" aria-label="{label}" xmlns="http://www.w3.org/2000/svg">{body}</svg>'
    )


def _drawn(shapes: Sequence[Shape], ident: str) -> Iterator[str]:
    """Each shape; lines of one look that follow each other, as hatching has them, as one path."""
    number = 0
    for look, run in groupby(shapes, key=_look):
        together = list(run)
        if look and len(together) > 1:
            yield _path(together)
        else:
            yield from (_shape(shape, f"{ident}-{number + n}") for n, shape in enumerate(together))
        number += len(together)


def _look(shape: Shape) -> tuple[str, float] | None:
    return (shape.role, shape.width) if isinstance(shape, Line) and not shape.dash else None


def _path(lines: Sequence[Shape]) -> str:
    places = "".join(
        f"M{_n(one.x1)} {_n(one.y1)}L{_n(one.x2)} {_n(one.y2)}"
        for one in lines
        if isinstance(one, Line)
    )
    first = lines[0]
    assert isinstance(first, Line)
    return f'<path d="{places}"{_paint("stroke", first.role)} stroke-width="{_n(first.width)}"/>'


def sign(shapes: Sequence[Shape], size: float) -> str:
    """A small sign `size` [mm] across, hidden from readers of the screen: words stand beside it."""
    body = "".join(_shape(shape, "") for shape in shapes)
    return f'<svg class="sign" viewBox="0 0 {_n(size)} {_n(size)}" aria-hidden="true">{body}</svg>'


def _shape(shape: Shape, ident: str) -> str:
    if isinstance(shape, Line):
        dash = ' stroke-dasharray="1.5 1.2"' if shape.dash else ""
        return (
            f'<line x1="{_n(shape.x1)}" y1="{_n(shape.y1)}" x2="{_n(shape.x2)}" y2="{_n(shape.y2)}"'
            f'{_paint("stroke", shape.role)} stroke-width="{_n(shape.width)}"{dash}/>'
        )
    if isinstance(shape, Rect):
        return (
            f'<rect x="{_n(shape.x)}" y="{_n(shape.y)}" width="{_n(shape.w)}" '
            f'height="{_n(shape.h)}"{_filled(shape.fill, shape.stroke, shape.width)}/>'
        )
    if isinstance(shape, Circle):
        return (
            f'<circle cx="{_n(shape.x)}" cy="{_n(shape.y)}" r="{_n(shape.r)}"'
            f"{_filled(shape.fill, shape.stroke, shape.width)}/>"
        )
    if isinstance(shape, Polygon):
        points = " ".join(f"{_n(x)},{_n(y)}" for x, y in shape.points)
        tag = "polygon" if shape.closed else "polyline"
        dash = ' stroke-dasharray="1.5 1.2"' if shape.dash else ""
        return f'<{tag} points="{points}"{_filled(shape.fill, shape.stroke, shape.width)}{dash}/>'
    if isinstance(shape, Glow):
        return "".join(_glow(shape, ident))
    return _text(shape)


def _glow(shape: Glow, ident: str) -> Iterator[str]:
    yield f'<defs><linearGradient id="{ident}">'
    for share, colour in shape.stops:
        yield f'<stop offset="{share:.3f}" stop-color="{colour}"/>'
    yield "</linearGradient></defs>"
    yield (
        f'<rect x="{_n(shape.x)}" y="{_n(shape.y)}" width="{_n(shape.w)}" height="{_n(shape.h)}" '
        f'fill="url(#{ident})"{_paint("stroke", shape.stroke)} stroke-width="{_n(shape.width)}"/>'
    )


def _text(shape: Text) -> str:
    size = shape.cap / cap_share()
    anchor = "" if shape.anchor == "start" else f' text-anchor="{shape.anchor}"'
    return (
        f'<text x="{_n(shape.x)}" y="{_n(shape.y)}" font-size="{_n(size)}" '
        f'font-weight="{shape.weight}"{anchor}{_paint("fill", shape.role)}>'
        f"{escape(shape.text)}</text>"
    )


def _filled(fill: str, stroke: str, width: float) -> str:
    outline = f'{_paint("stroke", stroke)} stroke-width="{_n(width)}"' if stroke else ""
    return (_paint("fill", fill) if fill else ' fill="none"') + outline


def _paint(attribute: str, role: str) -> str:
    """A heat colour as it is; a role through the variable that the site's palette gives it."""
    if not role:
        return ""
    value = role if role.startswith("#") else f"var(--{role})"
    return f' {attribute}="{value}"'


def _n(value: float) -> str:
    return f"{value:.2f}".rstrip("0").rstrip(".")
