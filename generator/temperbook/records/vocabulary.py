"""The closed words of the handbook: quantities, what each needs, and the words of each basis
key."""

from __future__ import annotations

from dataclasses import dataclass

from temperbook.records.figures import Strict, Text


class Quantity(Strict):
    """What a quantity is called, its unit, and the basis keys without which it means nothing.

    The unit `word` stands for the closed words of `words`, the unit `text` for a source's key
    words.
    """

    label: Text
    group: Text
    unit: Text
    needs: list[Text] = []
    allows: list[Text] = []
    decimals: int = 0
    meaning: Text
    words: dict[str, Text] = {}
    one_number: bool = False

    @property
    def numeric(self) -> bool:
        """Whether its readings are numbers."""
        return self.unit not in ("word", "text")


class Word(Strict):
    """A closed word: how it is said, and what it means."""

    label: Text
    meaning: Text | None = None


@dataclass(frozen=True)
class Vocabulary:
    """Everything from data/vocabulary/."""

    quantities: dict[str, Quantity]
    words: dict[str, dict[str, Word]]

    def label(self, vocabulary: str, word: str) -> str:
        """How a closed word is said; the word itself where the vocabulary is open."""
        known = self.words.get(vocabulary, {}).get(word)
        return known.label if known else word

    def meaning(self, vocabulary: str, word: str) -> str:
        """What a closed word means, or an empty text."""
        known = self.words.get(vocabulary, {}).get(word)
        return known.meaning or "" if known else ""
