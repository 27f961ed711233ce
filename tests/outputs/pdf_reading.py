"""What a PDF says, how large its letters are, and what it looks like on paper."""

from __future__ import annotations

import io
import pickle
import shutil
import subprocess
from dataclasses import dataclass
from itertools import pairwise
from pathlib import Path

import pdfplumber
from outputs.building import missing, once
from PIL import Image

from temperbook.drawing.lettering import cap_share

MM = 72 / 25.4  # points in a millimetre


@dataclass(frozen=True)
class Run:
    """Letters of one size on one line: text, height of a capital [mm], font, ends and line [mm]."""

    text: str
    cap: float
    font: str
    left: float
    right: float
    base: float


@dataclass(frozen=True)
class PageRead:
    """A page: its texts as they were set, and how many lines and shapes stand beside them."""

    runs: list[Run]
    shapes: int


def read(pdf: Path) -> list[PageRead]:
    """The pages of a PDF."""
    with pdfplumber.open(pdf) as opened:
        return [
            PageRead(_runs(page), len(page.rects) + len(page.lines) + len(page.curves))
            for page in opened.pages
        ]


def read_once(pdf: Path) -> list[PageRead]:
    """The same, read by one worker for all: reading takes seconds."""

    def make(target: Path) -> None:
        target.write_bytes(pickle.dumps(read(pdf)))

    pages: list[PageRead] = pickle.loads(once(pdf.parent, f"{pdf.name}.read", make).read_bytes())
    return pages


def _runs(page: pdfplumber.page.Page) -> list[Run]:
    """The texts of a page as they were set."""
    found: list[list[dict]] = []  # type: ignore[type-arg]
    for char in page.chars:
        last = found[-1][-1] if found else None
        if last and _together(last, char):
            found[-1].append(char)
        else:
            found.append([char])
    return [_run(chars, float(page.height)) for chars in found]


def _together(a: dict, b: dict) -> bool:  # type: ignore[type-arg]
    same = a["fontname"] == b["fontname"] and abs(a["size"] - b["size"]) < 0.01
    beside = abs(a["bottom"] - b["bottom"]) < 0.1 and -0.3 < (b["x0"] - a["x1"]) / a["size"] < 0.4
    return same and beside


def _run(chars: list[dict], height: float) -> Run:  # type: ignore[type-arg]
    first, last = chars[0], chars[-1]
    base = (height - first["matrix"][5]) / MM
    return Run(
        "".join(c["text"] for c in chars),
        first["size"] * cap_share() / MM,
        first["fontname"].split("+")[-1],
        first["x0"] / MM,
        last["x1"] / MM,
        base,
    )


def squeezed(text: str) -> str:
    """A text without any space, so that line ends do not matter."""
    return "".join(text.split())


def overlapping(found: list[Run]) -> list[tuple[str, str]]:
    """Texts that stand on one another; a capital's height above each baseline counts."""
    boxes = [(r, r.left, r.base - r.cap, r.right, r.base) for r in found if r.text.strip()]
    boxes.sort(key=lambda b: b[2])
    wrong = []
    for n, (a, left, top, right, bottom) in enumerate(boxes):
        for b, left2, top2, right2, bottom2 in boxes[n + 1 :]:
            if top2 > bottom:
                continue
            wide = min(right, right2) - max(left, left2)
            high = min(bottom, bottom2) - max(top, top2)
            if wide > 0.2 and high > 0.2:
                wrong.append((a.text, b.text))
    return wrong


def rendered(pdf: Path, number: int, dpi: int = 100) -> Image.Image:
    """A page as a printer without colour makes it."""
    tool = shutil.which("pdftoppm")
    if tool is None:
        missing("pdftoppm of poppler")
    page = str(number)
    words = [tool, "-r", str(dpi), "-gray", "-f", page, "-l", page, str(pdf)]
    made = subprocess.run(words, capture_output=True, check=True)
    return Image.open(io.BytesIO(made.stdout)).convert("L")


def luminance(colour: str) -> float:
    """Relative luminance of `#rrggbb`, by the rules for accessible content."""
    parts = [int(colour[n : n + 2], 16) / 255 for n in (1, 3, 5)]
    red, green, blue = (c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in parts)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: str, other: str) -> float:
    """How far two colours stand apart, 1 to 21."""
    low, high = sorted((luminance(one), luminance(other)))
    return (high + 0.05) / (low + 0.05)


def between(stops: list[tuple[float, str]], share: float) -> str:
    """The colour at a share of a gradient."""
    for (a, first), (b, second) in pairwise(stops):
        if a <= share <= b:
            t = (share - a) / (b - a)
            mixed = (
                round(int(first[n : n + 2], 16) * (1 - t) + int(second[n : n + 2], 16) * t)
                for n in (1, 3, 5)
            )
            return "#" + "".join(f"{value:02x}" for value in mixed)
    raise ValueError(share)
