"""The anneal chart as sheets of shapes: title, axis of glow, rows, observers' names, notes,
address."""

from __future__ import annotations

from temperbook.drawing import anneal_layout as layout
from temperbook.drawing import lettering, marks
from temperbook.drawing.anneal_foot import Foot
from temperbook.drawing.anneal_layout import MARGIN, Axis, Colour, Columns, Line, glow_stops
from temperbook.drawing.paper import LETTERING, SIZES, Lettering
from temperbook.drawing.shapes import (
    BOLD,
    HAIRLINE,
    Circle,
    Glow,
    Picture,
    Rect,
    Shape,
    Text,
    hatching,
)
from temperbook.drawing.shapes import Line as Stroke
from temperbook.views.anneal_chart import AnnealChart, ChartRow


def draw(chart: AnnealChart, paper: str, read_at: str, colour: Colour) -> list[Picture]:
    """The sheets of a chart on a paper, lettered for a reading distance; type never shrinks to
    fit."""
    width, height = SIZES[paper]
    letters = LETTERING[read_at]
    head = MARGIN + letters.title * 1.3 + letters.other * 2.45

    def room(rows: list[ChartRow]) -> float:
        foot = Foot(chart, rows, letters, width)
        return height - head - foot.height - MARGIN - letters.note

    pages = layout.sheets(chart, letters, room)
    return [
        _sheet(chart, lines, (number, len(pages)), letters, (width, height, head), colour)
        for number, lines in enumerate(pages, 1)
    ]


def _sheet(
    chart: AnnealChart,
    lines: list[Line],
    numbered: tuple[int, int],
    letters: Lettering,
    size: tuple[float, float, float],
    colour: Colour,
) -> Picture:
    width, height, head = size
    rows = [line.row for line in lines if line.row]
    at = layout.columns(rows, letters, MARGIN, width - MARGIN)
    scale = layout.axis(rows, at)
    shapes: list[Shape] = [Rect(0, 0, width, height, fill="paper")]
    shapes += _title(chart, numbered, letters, width)
    bottom = head + sum(layout.pitch(letters, line) for line in lines)
    shapes += _axis(scale, at, letters, head, bottom, colour)
    y = head
    for line in lines:
        pitch = layout.pitch(letters, line)
        shapes += _heading(line.heading, letters, y, pitch, width) if line.heading else []
        shapes += (
            _row(line.row, chart.margin, at, scale, letters, (y, pitch), colour) if line.row else []
        )
        y += pitch
    shapes += Foot(chart, rows, letters, width).shapes(height, colour)
    names = ", ".join(row.name for row in rows)
    return Picture(width, height, tuple(shapes), f"Anneal chart, sheet {numbered[0]}: {names}")


def _title(
    chart: AnnealChart, numbered: tuple[int, int], letters: Lettering, width: float
) -> list[Shape]:
    base = MARGIN + letters.title
    after = MARGIN + lettering.width(chart.title, letters.title, 800) + letters.title * 0.6
    shapes: list[Shape] = [
        Text(MARGIN, base, chart.title, letters.title, 800),
        Text(after, base, chart.lead, letters.other),
    ]
    if numbered[1] > 1:
        shapes.append(
            Text(
                width - MARGIN,
                base,
                f"{numbered[0]}/{numbered[1]}",
                letters.other,
                anchor="end",
                role="ash",
            )
        )
    return shapes


def _axis(
    scale: Axis, at: Columns, letters: Lettering, head: float, bottom: float, colour: Colour
) -> list[Shape]:
    bar = letters.other * 0.7
    top = head - letters.other * 0.25 - bar
    stops = glow_stops(scale.low, scale.high, colour)
    shapes: list[Shape] = [Glow(scale.left, top, scale.width, bar, stops, stroke="ink")]
    for tick in scale.ticks():
        x = scale.x(tick)
        shapes.append(Stroke(x, top + bar, x, bottom, "hairline", HAIRLINE))
    for tick in scale.labelled(letters.other):
        place = (scale.x(tick), top - letters.other * 0.3)
        shapes.append(Text(*place, str(tick), letters.other, anchor="middle"))
    label = top - letters.other * 0.3
    first = scale.labelled(letters.other)[0]
    clear = scale.x(first) - lettering.width(f"{first} ", letters.other) / 2 - letters.other * 0.4
    unit = min(at.bars - letters.other * 1.6, clear)
    shapes += [
        Text(unit, label, "°C", letters.other, 700, "end"),
        Text(at.hold, label, layout.HOLD, letters.other, role="ash"),
        Text(at.right, label, layout.COOL, letters.other, anchor="end", role="ash"),
    ]
    return shapes


def _heading(text: str, letters: Lettering, y: float, pitch: float, width: float) -> list[Shape]:
    base = y + pitch * 0.5 + letters.other / 2
    return [
        Rect(MARGIN, y, width - 2 * MARGIN, pitch, fill="paper"),
        Stroke(MARGIN, y + pitch, width - MARGIN, y + pitch, "ink", BOLD),
        Text(MARGIN, base, text, letters.other, 700, role="ember", most=width - 2 * MARGIN),
    ]


def _row(
    row: ChartRow,
    margin: float,
    at: Columns,
    scale: Axis,
    letters: Lettering,
    place: tuple[float, float],
    colour: Colour,
) -> list[Shape]:
    y, pitch = place
    middle = y + pitch / 2
    key, other = middle + letters.key / 2, middle + letters.other / 2
    shapes: list[Shape] = [Stroke(MARGIN, y + pitch, at.right, y + pitch, "hairline", HAIRLINE)]
    shapes += _stop(row, margin, scale, (y + pitch * 0.12, pitch * 0.76))
    shapes += _window(row, scale, (middle - letters.key * 0.38, letters.key * 0.76), colour)
    shapes.append(Text(at.name, other, row.name, letters.other, 700))
    shapes.append(Text(at.figure, key, row.figure, letters.key, 800))
    shapes.append(
        Text(
            at.hold,
            other,
            row.hold or layout.NONE,
            letters.other,
            role="ink" if row.hold else "ash",
        )
    )
    shapes += _mark(row.mark, at.figure, row.figure, (letters.key, 800), key, letters)
    shapes += _mark(row.hold_mark, at.hold, row.hold, (letters.other, 400), other, letters)
    if row.by_instrument:
        shapes += marks.struck_eye(at.bars - letters.other * 0.1, middle, letters.other * 0.9)
    centre = at.cooling + letters.other * 0.95
    shapes += marks.cooling(row.quench, centre, middle, letters.other * 1.5)
    if not row.quench:
        shapes.append(Text(centre, other, layout.NONE, letters.other, anchor="middle", role="ash"))
    edge = letters.other * 0.35
    shapes += marks.provenance(
        row.quench_mark, at.right - edge, other - letters.other + edge, edge * 1.4
    )
    return shapes


def _mark(
    kind: str, x: float, text: str, type_: tuple[float, int], base: float, letters: Lettering
) -> list[Shape]:
    """A provenance mark at the upper right of a text, as a raised note would stand."""
    cap, weight = type_
    edge = letters.other * 0.35
    return marks.provenance(
        kind, x + lettering.width(text, cap, weight) + edge * 1.6, base - cap + edge, edge * 1.4
    )


def _stop(row: ChartRow, margin: float, scale: Axis, place: tuple[float, float]) -> list[Shape]:
    y, height = place
    if row.stop is None or row.stop - margin >= scale.high:
        return []
    left = scale.x(row.stop - margin)
    right = scale.left + scale.width
    shapes: list[Shape] = [
        Rect(left, y, right - left, height, fill="paper"),
        *hatching(left, y, right - left, height, step=max(1.6, height / 7)),
        Rect(left, y, right - left, height, stroke="ink", width=HAIRLINE),
    ]
    if row.stop < scale.high:
        melts = scale.x(row.stop)
        shapes.append(Stroke(melts, y, melts, y + height, "ink", BOLD * 1.5))
        size = height * 0.24
        x, middle = melts + size * 1.1, y + size * 0.95
        shapes.append(Circle(x, middle, size * 0.75, fill="paper", stroke=""))
        shapes += marks.provenance(row.stop_mark, x, middle, size)
    return shapes


def _window(row: ChartRow, scale: Axis, place: tuple[float, float], colour: Colour) -> list[Shape]:
    y, height = place
    shapes: list[Shape] = []
    for low, high in row.ordering:
        if high <= scale.low or low >= scale.high:
            continue
        left, right = scale.x(low), scale.x(high)
        shapes += [
            Stroke(x, y + height * 0.3, x, y + height * 0.7, "ink", HAIRLINE * 2)
            for x in _spread(left, right, 1.4)
        ]
    if row.low is None or row.high is None:
        return shapes
    left, right = scale.x(row.low), scale.x(row.high)
    if row.low == row.high:
        point = Circle(left, y + height / 2, height * 0.36, colour(row.low), width=HAIRLINE * 2)
        return [*shapes, point]
    stops = glow_stops(row.low, row.high, colour)
    return [*shapes, Glow(left, y, right - left, height, stops, stroke="ink", width=HAIRLINE * 2)]


def _spread(left: float, right: float, step: float) -> list[float]:
    if right - left < 2 * step:
        left, right = (left + right) / 2 - step, (left + right) / 2 + step
    return [left + n * step for n in range(round((right - left) / step) + 1)]
