"""A reading pack as the JSON that its Typst template takes: blocks, with every picture drawn."""

from __future__ import annotations

from dataclasses import asdict
from typing import Any

from temperbook.drawing import pictures
from temperbook.drawing.pictures import PictureFacts
from temperbook.drawing.signs import SIGNS
from temperbook.outputs.typeset.compile import picture_data
from temperbook.views.pack import PackShown
from temperbook.views.prose import Passage

PAPERS = {"a4": (210.0, 297.0), "letter": (215.9, 279.4)}


def data(said: PackShown, size: str, facts: PictureFacts) -> dict[str, Any]:
    """Everything that the template needs for a pack on `size` paper (a4 or letter)."""
    width, height = PAPERS[size]
    plain = asdict(said)
    for chapter, shown in zip(plain["chapters"], said.chapters, strict=True):
        chapter["passages"] = [_passage(passage, facts) for passage in shown.passages]
    for caution in plain["cautions"]:
        caution["drawn"] = [picture_data(SIGNS[sign]()) for sign, _ in caution["signs"]]
    return {**plain, "width": width, "height": height}


def _passage(passage: Passage, facts: PictureFacts) -> dict[str, Any]:
    plain = asdict(passage)
    plain["children"] = [_passage(child, facts) for child in passage.children]
    if passage.kind == "picture":
        plain["drawn"] = picture_data(pictures.draw(passage.picture, facts))
    return plain
