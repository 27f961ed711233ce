"""The foot of every anneal sheet: observers' names, legend, cautions and notes, edition,
address."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Literal

from temperbook.drawing import lettering, marks, qr, text_flow
from temperbook.drawing.anneal_layout import MARGIN, Axis, Colour, glow_stops
from temperbook.drawing.paper import Lettering
from temperbook.drawing.shapes import HAIRLINE, Glow, Line, Rect, Shape, Text, hatching
from temperbook.views.anneal_chart import AnnealChart, ChartCaution, ChartRow, ObserverLane

PITCH = 1.55  # of the height of a note's capital
OBSERVED = (400.0, 1100.0)  # degC that the observers' lanes span
QR = 22.0  # mm
WORDS = ("DANGER", "WARNING", "CAUTION")
SIGNAL = re.compile(f"({'|'.join(WORDS)})(?=[,:])")
HEAVIER = 2.0  # mm by which heavy signal words may lengthen a line
LIGHT_TEXT_BELOW = 850  # degC up to which figures on the glow are light


class Foot:
    """The foot of the sheet with these rows of a chart, for its lettering and width of paper; its
    height is known before anything is drawn."""

    def __init__(
        self, chart: AnnealChart, rows: Sequence[ChartRow], letters: Lettering, width: float
    ) -> None:
        self.chart, self.note, self.width = chart, letters.note, width
        self.cautions = on_sheet(chart, rows)
        self.pitch = letters.note * PITCH
        self.text_width = width - 2 * MARGIN - QR - 3
        self.legend = self._legend_lines()
        self.lines = self._note_lines(letters.metres)
        self.lanes = len(chart.observers) * self.pitch + letters.note * 2
        text = (len(self.legend) + len(self.lines)) * self.pitch
        self.height = self.lanes + max(QR, text) + 1

    def shapes(self, height: float, colour: Colour) -> list[Shape]:
        """The foot's shapes on a sheet of this height [mm]."""
        top = height - MARGIN - self.height
        shapes = self._observers(top, colour)
        base = top + self.lanes + self.note
        for line in self.legend:
            shapes += self._legend(line, base)
            base += self.pitch
        for text in self.lines:
            shapes += self._said(text, base)
            base += self.pitch
        corner = self.width - MARGIN - QR
        return [*shapes, *qr.code(self.chart.address, corner, height - MARGIN - QR, QR)]

    def _note_lines(self, metres: int) -> list[str]:
        said = [
            f"{c.signal}{', ' * bool(c.name)}{c.name.lower()}: {c.quick}" for c in self.cautions
        ]
        address = self.chart.address.removeprefix("https://")
        sheet = f"Read at {metres} m. {self.chart.edition}. {address}"
        sentences = [*(s.rstrip(".") + "." for s in said), *self.chart.notes, sheet]
        return text_flow.lines(" ".join(sentences), self.note, self.text_width - HEAVIER)

    def _said(self, text: str, base: float) -> list[Shape]:
        """A line of the notes, its signal words heavy."""
        x, shapes = MARGIN, list[Shape]()
        for piece in filter(None, SIGNAL.split(text)):
            weight: Literal[400, 800] = 800 if piece in WORDS else 400
            shapes.append(Text(x, base, piece.strip(), self.note, weight))
            x += lettering.width(piece, self.note, weight)
        return shapes

    def _legend_lines(self) -> list[list[tuple[str, str]]]:
        items = [
            *self.chart.legend,
            *self.chart.cooling,
            ("eye", "kiln or marker, not the eye"),
            ("hatch", "do not enter"),
            ("dots", "do not linger"),
            ("", "min: minutes at heat"),
        ]
        found: list[list[tuple[str, str]]] = [[]]
        x = 0.0
        for item in items:
            wide = self._item_width(item[1])
            if found[-1] and x + wide > self.text_width:
                found.append([])
                x = 0.0
            found[-1].append(item)
            x += wide
        return found

    def _item_width(self, text: str) -> float:
        return self.note * 2.9 + lettering.width(text, self.note)

    def _legend(self, items: list[tuple[str, str]], base: float) -> list[Shape]:
        note, x = self.note, MARGIN
        shapes: list[Shape] = []
        for kind, text in items:
            shapes += self._sign(kind, x + note * 0.6, base - note / 2)
            shapes.append(Text(x + note * 1.5, base, text, note))
            x += self._item_width(text)
        return shapes

    def _sign(self, kind: str, x: float, y: float) -> list[Shape]:
        note = self.note
        if kind == "eye":
            return marks.struck_eye(x, y, note * 1.2)
        if kind == "hatch":
            left, top = x - note * 0.6, y - note * 0.5
            box = Rect(left, top, note * 1.2, note, stroke="ink", width=HAIRLINE)
            return [*hatching(left, top, note * 1.2, note, 0.9), box]
        if kind == "dots":
            ticks = (x + note * share for share in (-0.5, -0.25, 0.0, 0.25, 0.5))
            return [Line(t, y - note * 0.3, t, y + note * 0.3, "ink", HAIRLINE * 2) for t in ticks]
        return marks.provenance(kind, x, y, note * 0.8) or marks.cooling(kind, x, y, note * 1.2)

    def _observers(self, top: float, colour: Colour) -> list[Shape]:
        note, (low, high) = self.note, OBSERVED
        label = 3 + max(lettering.width(lane.name, note) for lane in self.chart.observers)
        scale = Axis(low, high, MARGIN + label, self.width - 2 * MARGIN - label)
        bar = note * 1.3
        shapes: list[Shape] = [
            Text(MARGIN, top + note * 1.15, "seen as", note, 700),
            Glow(scale.left, top, scale.width, bar, glow_stops(low, high, colour), stroke="ink"),
        ]
        for tick in scale.ticks():
            shapes.append(self._tick(tick, scale, top + note * 1.15))
        y = top + bar + 0.8
        for lane in self.chart.observers:
            shapes += _lane(lane, scale, note, y, self.pitch)
            y += self.pitch
        return shapes

    def _tick(self, tick: int, scale: Axis, base: float) -> Text:
        shift = 1 if tick == scale.low else -1 if tick == scale.high else 0
        anchor = ("end", "middle", "start")[shift + 1]
        role = "#f2e8da" if tick < LIGHT_TEXT_BELOW else "#1c1a17"
        return Text(scale.x(tick) + shift, base, str(tick), self.note, 700, anchor, role)  # type: ignore[arg-type]


def on_sheet(chart: AnnealChart, rows: Sequence[ChartRow]) -> list[ChartCaution]:
    """The cautions of a sheet: those for all work, and those that the alloys of its rows bring."""
    there = {row.alloy for row in rows}
    return [c for c in chart.cautions if not c.alloys or c.alloys & there]


def _lane(lane: ObserverLane, scale: Axis, note: float, y: float, pitch: float) -> list[Shape]:
    """One observer's names at the heat where each begins; a name that meets the next one is left
    out."""
    base = y + pitch / 2 + note / 2
    end = scale.left + scale.width
    shapes: list[Shape] = [
        Text(MARGIN, base, lane.name, note, role="ash", most=scale.left - MARGIN),
        Line(scale.left, y + pitch, end, y + pitch, "hairline", HAIRLINE),
    ]
    inside = [n for n in sorted(lane.names, key=lambda n: n[1]) if scale.low <= n[1] < scale.high]
    starts = [scale.x(n[1]) for n in inside] + [end]
    for (text, _, _), x, following in zip(inside, starts, starts[1:], strict=False):
        shapes.append(Line(x, y + 0.6, x, y + pitch - 0.6, "ink", HAIRLINE * 2))
        if x + 1 + lettering.width(text, note) < following:
            shapes.append(Text(x + 1, base, text, note))
    return shapes
