"""Finenesses, the elements and the spread formula, held against their own rules, against a second
table and against an independent one. Lists of exceptions say why, and may only shrink.
"""

from __future__ import annotations

import math

import periodictable
import pytest

from temperbook.metal.spread import SpreadRule, width_after_pass
from temperbook.records.figures import Figure
from temperbook.records.load import Library

GAS_CONSTANT = 8.314462618  # J/mol/K, CODATA 2018


def value(figure: Figure) -> float:
    assert figure.value is not None
    return figure.value


def named(library: Library, record: str, quantity: str) -> dict[str, float]:
    """Name -> value of one quantity of a subject or element."""
    holder = library.subjects.get(record) or library.elements[record]
    return {figure.name or "": value(figure) for figure in holder.figures[quantity]}


# -- finenesses


def test_finenesses_are_those_of_carats(library: Library) -> None:
    """A gold standard is a whole carat of 24ths, to the thousandth and down; 585 and 999 are marks
    of convention, 990 that of a bank.
    """
    seen = {
        value(figure)
        for record, subject in library.subjects.items()
        if record.startswith("fineness/")
        for figure in subject.figures["legal-fineness"]
        if figure.element == "Au"
    }
    by_carat = {math.floor(1000 * carat / 24) for carat in range(1, 24)}
    assert seen - by_carat == {585, 990, 999}
    assert seen >= {375, 750, 916}


def test_names_of_finenesses_are_the_finenesses(library: Library) -> None:
    compared = 0
    for record, subject in library.subjects.items():
        for figure in subject.figures.get("legal-fineness", []):
            assert 333 <= value(figure) < 1000, record
            if (figure.name or "").isdigit():
                compared += 1
                assert value(figure) == int(figure.name or ""), record
    assert compared > 50


def test_sterling_and_eighteen_carat_are_law_everywhere(library: Library) -> None:
    """As a survey of the Hallmarking Convention's members found in 2012 (925, 750), for those
    systems that list more than a lowest fineness.
    """
    for record in ("uk", "convention", "france", "italy"):
        listed = {
            (figure.element, figure.value)
            for figure in library.subjects[f"fineness/{record}"].figures["legal-fineness"]
        }
        assert {("Ag", 925), ("Au", 750), ("Pt", 950)} <= listed, record


# -- elements


def test_atomic_masses(library: Library) -> None:
    """Against periodictable, whose table is that of NIST and IUPAC."""
    assert len(library.elements) >= 31
    for symbol, element in library.elements.items():
        (figure,) = element.figures["atomic-mass"]
        known = getattr(periodictable, symbol).mass
        assert figure.value == pytest.approx(known, rel=1e-4), symbol


# Elements that keep to the law of Dulong and Petit only far above room temperature.
STIFF = {"Be": "light and stiff: most of its vibrations are frozen at room temperature"}


def test_heats_by_dulong_and_petit(library: Library) -> None:
    """Specific heat of a solid element near room temperature is 3R/M, within 25 percent."""
    off, compared = set(), 0
    for symbol, element in library.elements.items():
        (mass,) = element.figures["atomic-mass"]
        found = [
            value(figure) * value(mass)
            for figure in element.figures.get("specific-heat", [])
            if figure.name == "near-room"
        ] + [value(figure) for figure in element.figures.get("molar-heat", [])]
        assert found, symbol
        compared += len(found)
        if any(abs(heat / (3 * GAS_CONSTANT) - 1) > 0.25 for heat in found):
            off.add(symbol)
    assert compared > 50
    assert off == STIFF.keys()


def test_heats_of_a_gram_and_of_a_mole_agree(library: Library) -> None:
    """Independent tables: specific heat x atomic mass is the molar heat, within 4 percent; latent
    heat x atomic mass is the molar heat of melting, within 4 percent.
    """
    compared = 0
    for symbol, element in library.elements.items():
        (mass,) = element.figures["atomic-mass"]
        for small, large, factor in (
            ("specific-heat", "molar-heat", 1),
            ("latent-heat", "fusion-heat", 1000),
        ):
            for gram in element.figures.get(small, []):
                for mole in element.figures.get(large, []):
                    if gram.name in (None, "near-room"):
                        compared += 1
                        assert value(gram) * value(mass) == pytest.approx(
                            factor * value(mole), rel=0.04
                        ), (symbol, small)
    assert compared >= 29


def test_metals_take_more_heat_as_they_warm(library: Library) -> None:
    for symbol in ("Ag", "Au", "Cu", "Ni", "Pt"):
        heats = named(library, symbol, "specific-heat")
        assert heats["near-room"] < heats["600-k"] < heats["1200-k"], symbol


def test_the_metals_of_the_bench_have_what_melting_takes(library: Library) -> None:
    for symbol in ("Ag", "Au", "Cu", "Ni", "Pd", "Pt", "Sn", "Zn"):
        figures = library.elements[symbol].figures
        assert {"density", "melting-point", "specific-heat", "latent-heat"} <= figures.keys()
    for symbol, element in library.elements.items():
        assert {"density", "melting-point", "fusion-heat"} <= element.figures.keys(), symbol


# -- spread


@pytest.mark.parametrize(
    ("width", "before", "after", "ratio"), [(200, 40, 30, 1.0021), (40, 40, 30, 1.1137)]
)
def test_spread_as_worked_in_print(
    width: float, before: float, after: float, ratio: float, library: Library
) -> None:
    """Two examples of the page that prints the formula (pass-design-wusatowski): a flat and a
    square bar between rolls of 280 mm, without corrections.
    """
    constant = named(library, "bench/spread", "spread-constant")
    rolled = width_after_pass(
        width, before, after, 280, SpreadRule(constant["factor"], constant["power"])
    )
    assert rolled / width == pytest.approx(ratio, abs=0.00006)
