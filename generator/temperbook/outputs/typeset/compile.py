"""Compiles a Typst template with data as JSON; any compiler warning is an error."""

from __future__ import annotations

import json
import warnings
from collections.abc import Sequence
from dataclasses import asdict
from pathlib import Path
from typing import Any, Literal

from temperbook.drawing.lettering import FAMILY, FONTS, cap_share
from temperbook.drawing.shapes import Picture, Shape
from temperbook.paths import installed_root

TEMPLATES = Path(__file__).parent
Format = Literal["pdf", "svg", "png"]

# Paper is always light, whatever the screen is.
PALETTE = {
    "paper": "#ffffff",
    "ink": "#1c1a17",
    "ash": "#59524a",
    "ember": "#942f08",
    "verdigris": "#1b5b51",
    "hairline": "#b9ae9c",
}


class TypesetError(Exception):
    """Typst refused, or warned, which counts as much."""


def compiled(
    template: str, data: Any, edition_date: str, form: Format = "pdf", ppi: float = 110
) -> list[bytes]:
    """The document of a template: one PDF, or one image a page.

    data: anything that JSON can hold. edition_date: `2026-11-25`; the document's only date, so that the same
    data give the same bytes. Errors: TypesetError for an error or a warning of the compiler.
    """
    import typst

    inputs = {
        "data": json.dumps({"palette": PALETTE, "family": FAMILY, **data}, ensure_ascii=False)
    }
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        try:
            made, told = typst.compile_with_warnings(
                str(TEMPLATES / template),
                root=str(TEMPLATES),
                font_paths=[str(installed_root() / FONTS)],
                ignore_system_fonts=True,
                format=form,
                ppi=ppi,
                sys_inputs=inputs,
                timestamp=_timestamp(edition_date),
            )
        except Exception as error:
            raise TypesetError(str(error)) from error
    if told:
        raise TypesetError("; ".join(str(warning) for warning in told))
    return [made] if isinstance(made, bytes) else list(made)


def _timestamp(date: str) -> int:
    from datetime import UTC, datetime

    return int(datetime.fromisoformat(date).replace(tzinfo=UTC).timestamp())


def picture_data(picture: Picture) -> dict[str, Any]:
    """A picture as JSON: sizes in mm, each shape with its kind, type sizes for its letters."""
    return {
        "width": picture.width,
        "height": picture.height,
        "alt": picture.alt,
        "shapes": [_shape_data(shape) for shape in picture.shapes],
    }


def _shape_data(shape: Shape) -> dict[str, Any]:
    data = asdict(shape)
    data["kind"] = type(shape).__name__.lower()
    if data["kind"] == "text":
        data["size"] = data["cap"] / cap_share()
    return data


def sheets_data(pictures: Sequence[Picture], title: str) -> dict[str, Any]:
    """Sheets that are pictures from edge to edge."""
    return {"title": title, "pages": [picture_data(picture) for picture in pictures]}
