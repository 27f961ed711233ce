"""Words of the trade in a page's sentences: each leads to the glossary where it first stands."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass

from temperbook.records.models import Term
from temperbook.views import routes

SHORTEST = 6  # letters; shorter terms are common words in other senses ("pass", "form", "point")


@dataclass(frozen=True)
class Piece:
    """A part of a sentence; href where it is a term that the page has not used before."""

    text: str
    href: str = ""


class Terms:
    """Finds the terms of a glossary in the sentences of pages.

    Example: `Terms(library.glossary).page()("Cut the lamination away.")` gives three pieces, the
    second of which leads to `glossary/#lamination`.
    """

    def __init__(self, glossary: Mapping[str, Term]) -> None:
        self._ids: dict[str, str] = {}
        for term_id, term in glossary.items():
            name = term.term.lower().split(" (")[0]
            if len(name) >= SHORTEST:
                self._ids |= {name: term_id, _plural(name): term_id}
        longest_first = sorted(self._ids, key=len, reverse=True)
        either = "|".join(map(re.escape, longest_first)) or r"(?!)"
        self._pattern = re.compile(rf"\b({either})\b", re.IGNORECASE)

    def page(self) -> Callable[[str], list[Piece]]:
        """What splits the sentences of one page, given in the order in which they are read."""
        used: set[str] = set()
        return lambda text: self._pieces(text, used)

    def _pieces(self, text: str, used: set[str]) -> list[Piece]:
        """A sentence in pieces, which together give it; the terms that it uses join `used`."""
        found: list[Piece] = []
        end = 0
        for match in self._pattern.finditer(text):
            term = self._ids[match[1].lower()]
            if term in used:
                continue
            used.add(term)
            found += [Piece(text[end : match.start()]), Piece(match[0], _href(term))]
            end = match.end()
        return [piece for piece in (*found, Piece(text[end:])) if piece.text]


def _plural(name: str) -> str:
    return f"{name[:-1]}ies" if name.endswith("y") else f"{name}s"


def _href(term: str) -> str:
    return routes.page("glossary", term)
