"""A page of the site as a tree, as much of one as the tests ask for."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from html.parser import HTMLParser

# Elements that have no end tag.
VOID = {"area", "base", "br", "col", "embed", "hr", "img", "input", "link", "meta", "source"}


@dataclass
class Element:
    """An element; `parts` holds texts and elements in their order."""

    tag: str
    attrs: dict[str, str]
    parts: list[str | Element] = field(default_factory=list)

    def walk(self) -> Iterator[Element]:
        """The element and all below it, in document order."""
        yield self
        for part in self.parts:
            if isinstance(part, Element):
                yield from part.walk()

    def all(self, tag: str = "", cls: str = "") -> list[Element]:
        """All below it with this tag and this class."""
        return [
            e
            for e in self.walk()
            if tag in ("", e.tag) and (not cls or cls in e.attrs.get("class", "").split())
        ]

    def one(self, tag: str = "", cls: str = "") -> Element:
        """The only such element."""
        found = self.all(tag, cls)
        assert len(found) == 1, f"{len(found)} of {tag}.{cls}"
        return found[0]

    def text(self) -> str:
        """Its text with single spaces."""
        return " ".join("".join(self._texts()).split())

    def _texts(self) -> Iterator[str]:
        for part in self.parts:
            if isinstance(part, Element):
                yield from part._texts()
            else:
                yield part


class _Builder(HTMLParser):
    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.root = Element("", {})
        self.open = [self.root]

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        element = Element(tag, {name: value or "" for name, value in attrs})
        self.open[-1].parts.append(element)
        if tag not in VOID:
            self.open.append(element)

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.open[-1].parts.append(Element(tag, {name: value or "" for name, value in attrs}))

    def handle_endtag(self, tag: str) -> None:
        assert self.open[-1].tag == tag, f"</{tag}> closes <{self.open[-1].tag}>"
        self.open.pop()

    def handle_data(self, data: str) -> None:
        self.open[-1].parts.append(data)


def parse(text: str) -> Element:
    """The tree of a page. Errors: AssertionError where an end tag does not close what is open."""
    builder = _Builder()
    builder.feed(text)
    builder.close()
    assert builder.open == [builder.root], f"<{builder.open[-1].tag}> is never closed"
    return builder.root
