"""A QR code (ISO/IEC 18004) as shapes."""

from __future__ import annotations

from itertools import groupby

from temperbook.drawing.shapes import Rect, Shape

QUIET = 4  # modules of empty border that readers need


def code(text: str, x: float, y: float, size: float) -> list[Shape]:
    """The code of a text in a square of `size` [mm] whose upper left corner is at x, y; border
    included."""
    import segno

    matrix = segno.make(text, error="m", micro=False).matrix
    module = size / (len(matrix) + 2 * QUIET)
    shapes: list[Shape] = [Rect(x, y, size, size, fill="paper")]
    for row, cells in enumerate(matrix):
        column = 0
        for dark, run in groupby(cells):
            length = len(list(run))
            if dark:
                shapes.append(
                    Rect(
                        x + (column + QUIET) * module,
                        y + (row + QUIET) * module,
                        length * module,
                        module,
                        fill="ink",
                    )
                )
            column += length
    return shapes
