"""Registered formulas of gauges and ring sizes."""

from __future__ import annotations

from math import pi

from temperbook.metal import gauges, rings
from temperbook.metal.register.formula import (
    TEXT,
    Answer,
    Formula,
    Given,
    Said,
    Tables,
)
from temperbook.metal.register.inputs import choice, name, number

RING_SYSTEMS = ("iso", "us", "uk", "jp")
THICK = 0.25  # thickness over inside diameter from which the middle line is no longer safe


def _gauge(given: Given, tables: Tables) -> Answer:
    table = tables["gauges"].get(given["system"], {})
    if not table:
        raise ValueError(f"the records have no table of {given['system']}")
    if "number" in given:
        size = gauges.size(given["number"], table)
        return Answer({"mm": size, "in": size / gauges.INCH})
    size = given["mm"]
    number = gauges.nearest(size, table)
    note = (Said("beyond", {"number": number}),) if gauges.beyond(size, table) else ()
    return Answer({"nearest": number, "difference": size - table[number]}, note)


def _ring_size(given: Given, tables: Tables) -> Answer:
    diameter = _inside(given, tables)
    return Answer({"inside-diameter": diameter, "circumference": pi * diameter})


def _ring_blank(given: Given, tables: Tables) -> Answer:
    inside = given["inside-diameter"] if "inside-diameter" in given else _inside(given, tables)
    thickness = given["thickness"]
    thick = (Said("thick"),) if thickness > THICK * inside else ()
    return Answer({"length": rings.blank_length(inside, thickness)}, thick)


def _inside(given: Given, tables: Tables) -> float:
    system = tables["ring-sizes"].get(given["system"])
    if system is None:
        raise ValueError(f"the records have no ring sizes of {given['system']}")
    return rings.inside_diameter(given["size"], system)


FORMULAS = (
    Formula(
        "gauge",
        "Gauge numbers and millimetres",
        {
            "system": choice("Gauge", "awg", "swg", "bwg"),
            "number": name("Number"),
            "mm": number("Size", "mm"),
        },
        {"mm": "mm", "in": "in", "nearest": TEXT, "difference": "mm"},
        _gauge,
        "the table of the gauge; an inch is 25.4 mm",
        "the gauge's own table, see its page",
        example={"system": "awg", "number": "18"},
        expected={"mm": 1.024, "in": 0.0403},
        groups=((("number",), ("mm",)),),
        note="A difference above zero: the given size is thicker than the number's.",
        notes={"beyond": "The table ends at number {number}."},
        tables=("gauges",),
        example_tables={"gauges": {"awg": {"18": 1.024}}},
    ),
    Formula(
        "ring-size",
        "Ring sizes in millimetres",
        {"system": choice("System", *RING_SYSTEMS), "size": name("Size")},
        {"inside-diameter": "mm", "circumference": "mm"},
        _ring_size,
        "c = pi d; iso: c = size; the other systems by their own rule",
        "ISO 8653 and the page of each system",
        example={"system": "iso", "size": "54"},
        expected={"inside-diameter": 17.189, "circumference": 54},
        note="Sizes other than iso differ between makers: measure on the stick that the ring is "
        "made on.",
        tables=("ring-sizes",),
        example_tables={
            "ring-sizes": {
                "iso": {
                    "sizes": {},
                    "letters": False,
                    "rule": {"measure": "circumference", "first": 0.0, "step": 1.0},
                }
            }
        },
    ),
    Formula(
        "ring-blank",
        "Length of the strip for a ring",
        {
            "inside-diameter": number("Inside diameter", "mm"),
            "system": choice("System", *RING_SYSTEMS),
            "size": name("Size"),
            "thickness": number("Thickness of the strip", "mm"),
        },
        {"length": "mm"},
        _ring_blank,
        "l = pi (d + t)",
        "geometry of the middle line",
        example={"inside-diameter": 17.2, "thickness": 1.5},
        expected={"length": 58.748},
        groups=((("inside-diameter",), ("system", "size")),),
        note="On the mean diameter: it is assumed that the middle of the strip keeps its length. "
        "What the joint takes is not counted.",
        notes={
            "thick": "In so thick a strip the line that keeps its length moves inward (from "
            "memory, no source): leave some length to spare and measure."
        },
        tables=("ring-sizes",),
        example_tables={"ring-sizes": {}},
    ),
)
