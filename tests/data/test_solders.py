"""Solders held against their standards, against the metal that they join, and against mixing.

Exceptions are named with their reason; one that is no longer needed fails.
"""

from __future__ import annotations

import pytest

from temperbook.records import printed
from temperbook.records.figures import Figure
from temperbook.records.load import Library
from temperbook.records.models import Alloy, Solder

# Solders that join an alloy although no source gives their liquidus: why they may.
NO_LIQUIDUS = {
    "gold/for-22ct": "the source names the gold of twenty-two carat",
    "gold/for-24ct": "the source names fine gold",
    "silver/hard-80-20": "any mixture of silver and copper here melts below pure silver",
    "silver/two-to-one": "any mixture of silver and copper here melts below pure silver",
}
CARATS = {"solder-6ct": 6, "solder-8ct": 8, "solder-10ct": 10, "solder-12ct": 12}
CARATS |= {"solder-15ct": 15, "solder-16ct": 16}


def only(figures: list[Figure]) -> Figure:
    assert len(figures) == 1, figures
    return figures[0]


def upper(figure: Figure) -> float:
    end = figure.ends[1] if figure.ends[1] is not None else figure.ends[0]
    assert end is not None
    return end


def lower(figure: Figure) -> float:
    end = figure.ends[0] if figure.ends[0] is not None else figure.ends[1]
    assert end is not None
    return end


def melted_at(solder: Solder) -> float | None:
    """Adopted liquidus [degC], or the one melting temperature that a source gives."""
    figures = solder.figures.get("liquidus") or solder.figures.get("melting-point")
    return max(map(upper, figures)) if figures else None


def melts_from(alloy: Alloy) -> float:
    """The lowest adopted heat at which an alloy begins to melt [degC]."""
    figures = alloy.figures.get("solidus") or alloy.figures.get("melting-point", [])
    return min(map(lower, figures))


def test_there_are_solders_for_silver_and_gold(library: Library) -> None:
    families = [solder.family for solder in library.solders.values()]
    assert families.count("silver") >= 16
    assert families.count("gold") >= 8


def test_compositions_keep_within_printed_limits(library: Library) -> None:
    """Each share against the rows of its own solder that print limits: GOST 19738-74 table 1 and
    AWS A5.8 as MakeItFrom.com prints it.
    """
    compared = 0
    for row in library.evidence.values():
        solder = library.solders.get(row.record)
        value = printed.parse(row.printed_value)
        if not solder or row.quantity != "composition" or not value or value.low == value.high:
            continue
        low, high = value.ends
        assert low is not None
        assert high is not None
        assert low <= solder.composition[row.element or ""] <= high, row.id
        compared += 1
    assert compared >= 14


def test_aws_fillers_have_their_nominal_shares(library: Library) -> None:
    """Against the rows of Machinery's Handbook, Table 1a (AWS A5.8-1981)."""
    compared = set()
    for row in library.evidence.values():
        solder = library.solders.get(row.record)
        if solder and row.quantity == "composition" and row.source == "machinerys-handbook-31":
            assert solder.composition[row.element or ""] == float(row.printed_value), row.id
            compared.add(solder.id)
    assert len(compared) >= 11


def test_melting_begins_before_it_ends(library: Library) -> None:
    for solder in library.solders.values():
        ends = [upper(figure) for figure in solder.figures.get("liquidus", [])]
        for figure in solder.figures.get("solidus", []):
            assert all(lower(figure) <= end for end in ends), solder.id


def test_solder_is_liquid_below_what_it_joins(library: Library) -> None:
    """By the margin of bench/solder (twenty kelvin, C. Corti), against the adopted solidus."""
    margin = lower(only(library.subjects["bench/solder"].figures["solder-margin"]))
    without = set()
    for solder in library.solders.values():
        liquid = melted_at(solder)
        if liquid is None and solder.joins:
            without.add(solder.id)
        for alloy_id in solder.joins:
            begins = melts_from(library.alloys[alloy_id])
            if solder.id in NO_LIQUIDUS:
                known = [upper(figure) for figure in solder.figures.get("solidus", [])]
                assert all(end + margin <= begins for end in known), (solder.id, alloy_id)
            else:
                assert liquid is not None
                assert liquid + margin <= begins, (solder.id, alloy_id)
    assert {s.id for s in library.solders.values() if "liquidus" not in s.figures} >= without
    assert without == set(NO_LIQUIDUS)


def test_no_bench_melts_cadmium(library: Library) -> None:
    with_cadmium = [s for s in library.solders.values() if "Cd" in s.composition]
    assert [solder.id for solder in with_cadmium] == ["silver/bag-1"]
    for solder in with_cadmium:
        assert solder.melt == "never"
        assert not solder.joins
        assert "lead-and-cadmium" in solder.cautions


@pytest.mark.parametrize("name", CARATS)
def test_carat_in_the_name_is_the_gold(library: Library, name: str) -> None:
    """Carats are 24ths of the mass; Oechsle 1840 and Jones 1917 print weights or 24ths."""
    assert library.solders[f"gold/{name}"].composition["Au"] == pytest.approx(
        100 * CARATS[name] / 24, abs=0.06
    )


def test_eutectic_filler_melts_at_the_calculated_eutectic(library: Library) -> None:
    """AWS BAg-8, printed in degrees Fahrenheit, against NIST's calculated 779.1 degC."""
    eutectic = lower(library.subjects["system/ag-cu"].figures["eutectic"][0])
    for quantity in ("solidus", "liquidus"):
        figure = only(library.solders["silver/bag-8"].figures[quantity])
        assert upper(figure) == pytest.approx(eutectic, abs=1)


def test_densities_lie_near_mixing(library: Library) -> None:
    """Against the elements' own densities, mixed by volume; zinc and tin shrink in silver."""
    compared = 0
    for solder in library.solders.values():
        for figure in solder.figures.get("density", []):
            volumes = (
                share / lower(library.elements[element].figures["density"][0])
                for element, share in solder.composition.items()
            )
            assert upper(figure) == pytest.approx(100 / sum(volumes), rel=0.04), solder.id
            compared += 1
    assert compared >= 6


def test_names_of_solders_are_their_own(library: Library) -> None:
    seen: dict[str, str] = {}
    named: list[Alloy | Solder] = [*library.alloys.values(), *library.solders.values()]
    for record in named:
        for name in {record.id, record.name, record.short, *record.also}:
            other = seen.setdefault(name.lower(), record.id)
            assert other == record.id, name
