"""A page of the site as a tree, as much of one as the tests ask for."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from html.parser import HTMLParser
from pathlib import Path
from urllib.parse import unquote, urljoin, urlsplit

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


class Pages(Mapping[str, Element]):
    """Every page of a site by its address below the root (`alloys/silver/sterling-925/`), read
    when it is first asked for."""

    def __init__(self, folder: Path) -> None:
        self._files = {
            path.parent.relative_to(folder).as_posix().removeprefix(".") + "/": path
            for path in sorted(folder.rglob("index.html"))
        }
        self._read: dict[str, Element] = {}

    def __getitem__(self, address: str) -> Element:
        if address not in self._read:
            self._read[address] = parse(self._files[address].read_text(encoding="utf-8"))
        return self._read[address]

    def __iter__(self) -> Iterator[str]:
        return iter(self._files)

    def __len__(self) -> int:
        return len(self._files)


def dead_links(pages: dict[str, Element], folder: Path) -> tuple[list[tuple[str, str]], int]:
    """Links and files of pages that lead nowhere inside the site, and how many were followed."""
    places = {address.lstrip("/"): page for address, page in pages.items()}
    anchors = {a: {e.attrs.get("id", "") for e in page.walk()} | {""} for a, page in places.items()}
    wrong, followed = [], 0
    for address, page in places.items():
        for element in page.walk():
            for name in ("href", "src"):
                given = element.attrs.get(name)
                if given is None or element.attrs.get("rel") == "canonical":
                    continue
                target = urlsplit(urljoin(f"http://site/{address}", given))
                if target.netloc != "site":
                    continue
                followed += 1
                path = unquote(target.path).lstrip("/")
                here = path if path in places else f"{path}/"
                if here in places:
                    if target.fragment not in anchors[here]:
                        wrong.append((address, given))
                elif not (folder / path).is_file():
                    wrong.append((address, given))
    return wrong, followed
