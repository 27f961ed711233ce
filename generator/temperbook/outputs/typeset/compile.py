"""Compiles a Typst template with data as JSON; any compiler warning is an error."""

from __future__ import annotations

import json
import subprocess
import sys
import tempfile
from collections.abc import Sequence
from datetime import UTC, datetime
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

    The compiler keeps all that it ever laid out, so each document is made in a process of its own,
    which gives the memory back. data: anything that JSON can hold. edition_date: `2026-11-25`; the
    document's only
    date, so that the same data give the same bytes. Errors: TypesetError for an error or a warning.
    """
    with tempfile.TemporaryDirectory(prefix="temperbook-") as folder:
        request = {
            "template": str(TEMPLATES / template),
            "root": str(TEMPLATES),
            "fonts": str(installed_root() / FONTS),
            "format": form,
            "ppi": ppi,
            "timestamp": _timestamp(edition_date),
            "data": {"palette": PALETTE, "family": FAMILY, **data},
            "folder": folder,
        }
        run = subprocess.run(
            [sys.executable, str(Path(__file__).with_name("compiler_process.py"))],
            input=json.dumps(request, ensure_ascii=False).encode(),
            capture_output=True,
            check=False,
        )
        if run.returncode:
            raise TypesetError(run.stderr.decode(errors="replace").strip())
        return [path.read_bytes() for path in sorted(Path(folder).iterdir())]


def _timestamp(date: str) -> int:
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
    data = dict(vars(shape))  # shapes hold plain values alone
    data["kind"] = type(shape).__name__.lower()
    if data["kind"] == "text":
        data["size"] = data["cap"] / cap_share()
    return data


def sheets_data(pictures: Sequence[Picture], title: str) -> dict[str, Any]:
    """Sheets that are pictures from edge to edge."""
    return {"title": title, "pages": [picture_data(picture) for picture in pictures]}
