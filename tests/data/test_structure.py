"""What each alloy's structure asks of the bench: which alloys are one phase, which order or age,
and whether the anneal's other figures fit. Limits are read from the records; sources stand beside.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

import pytest

from temperbook.records.figures import Figure
from temperbook.records.load import Library
from temperbook.records.models import Alloy

CHANGING = ("ordering", "ageing")
# A page that has no heat for it says so in words.
NOTHING_FOUND = re.compile(r"\b(not|none|nothing|no)\b.*\b(found|published)\b", re.IGNORECASE)
SPEAKS_OF_IT = re.compile(
    r"\b(age[ds]?|ageing|order(s|ed|ing)?|harden(s|ed|ing)?)\b", re.IGNORECASE
)


def structure(library: Library, alloy_id: str) -> str:
    stated = library.alloys[alloy_id].structure
    assert stated, f"{alloy_id} does not state its structure"
    return stated.rule


def solubility(library: Library, system: str, element: str, name: str | None = None) -> float:
    """How much of the element the solid holds, by the system's record [percent of the mass]."""
    [figure] = [
        figure
        for figure in library.subjects[system].figures["solubility"]
        if figure.element == element and figure.name == name
    ]
    assert figure.value is not None
    return figure.value


def made_of(library: Library, *elements: str) -> Iterator[tuple[str, dict[str, float]]]:
    """Alloys of these elements and hardly anything else; each of them has to be there."""
    for alloy_id, alloy in library.alloys.items():
        shares = [alloy.composition.get(element, 0.0) for element in elements]
        if min(shares) > 0 and sum(shares) > 99.5:
            yield alloy_id, dict(zip(elements, shares, strict=True))


def plain(alloy: Alloy, quantity: str) -> list[Figure]:
    """Figures of the quantity that hold for the alloy itself, not for a named case."""
    return [figure for figure in alloy.figures.get(quantity, []) if not figure.name]


def changing(library: Library) -> Iterator[tuple[str, Alloy]]:
    for alloy_id, alloy in library.alloys.items():
        if alloy.structure and alloy.structure.rule in CHANGING:
            yield alloy_id, alloy


# -- every page


def test_every_alloy_states_its_structure(library: Library) -> None:
    silent = sorted(alloy_id for alloy_id, alloy in library.alloys.items() if not alloy.structure)
    assert not silent
    assert len(library.alloys) >= 45


def test_alloys_that_order_or_age_say_at_what_heat(library: Library) -> None:
    """A band not to linger in, the heat at which it ages or orders, or a sentence that says that
    none was found.
    """
    silent: list[str] = []
    worded: list[str] = []
    figured: list[str] = []
    for alloy_id, alloy in changing(library):
        known = any(alloy.figures.get(quantity) for quantity in ("no-dwell", "age", "ordering"))
        said = any(
            NOTHING_FOUND.search(remark.text) and SPEAKS_OF_IT.search(remark.text)
            for remark in alloy.remarks
        )
        (figured if known else worded if said else silent).append(alloy_id)
    assert not silent
    assert len(figured) >= 8, "18, 14 and 9 ct golds and the sterlings have figures"
    assert "silver/silver-935" in worded


def test_sentence_of_nothing_found_is_recognised() -> None:
    """The words that the rule above looks for, and a sentence that is none of them."""
    said = "At what heat it is best aged has not been found in print."
    assert NOTHING_FOUND.search(said)
    assert SPEAKS_OF_IT.search(said)
    assert not NOTHING_FOUND.search("Quench it while it still glows, or it may harden.")
    assert not SPEAKS_OF_IT.search("No melting range was found.")


# -- systems


def test_silver_copper_between_the_limits_is_never_one_phase(library: Library) -> None:
    """Between what silver holds of copper and copper of silver both solids are there at any heat:
    NIST Metallurgy Division, Ag-Cu system, calculated invariant equilibria.
    """
    copper_in_silver = solubility(library, "system/ag-cu", "Cu")
    silver_in_copper = solubility(library, "system/ag-cu", "Ag")
    assert (copper_in_silver, silver_in_copper) == (8.27, 7.47)
    between = [
        alloy_id
        for alloy_id, share in made_of(library, "Ag", "Cu")
        if share["Cu"] > copper_in_silver and share["Ag"] > silver_in_copper
    ]
    assert {"silver/silver-900", "silver/silver-800", "japanese/shibuichi"} <= set(between)
    for alloy_id in between:
        assert structure(library, alloy_id) in ("two-phase", "ageing"), alloy_id


def test_silver_with_a_little_copper_ages(library: Library) -> None:
    """Silver and copper part on slow cooling: Welz, annealing of silver-copper jewellery alloys.
    Sterling is hardened by heat: Fischer-Buehner, Santa Fe Symposium 2003.
    """
    limit = solubility(library, "system/ag-cu", "Cu")
    within = [name for name, share in made_of(library, "Ag", "Cu") if 3 <= share["Cu"] <= limit]
    assert {"silver/sterling-925", "silver/britannia-958"} <= set(within)
    assert {structure(library, alloy_id) for alloy_id in within} == {"ageing"}


def test_brass_is_one_phase_up_to_a_third_of_zinc_and_muntz_metal_is_two(
    library: Library,
) -> None:
    """Under 35 percent of zinc one phase: overview of brass, 2008, and the data page of alpha
    brass. Cartridge brass one phase, Muntz metal two: Princeton, glossary of course MAE 324. More
    than 39 is more than the alpha phase ever holds: scanned textbook on copper alloys, 16.30.
    """
    most = solubility(library, "system/cu-zn", "Zn", name="at 454 degC")
    zinc = {alloy_id: share["Zn"] for alloy_id, share in made_of(library, "Cu", "Zn")}
    low = {alloy_id for alloy_id, share in zinc.items() if share < 35}
    high = {alloy_id for alloy_id, share in zinc.items() if share > most}
    assert len(low) >= 5
    assert "copper/cartridge-brass" in low
    assert "copper/muntz-metal" in high
    assert {structure(library, alloy_id) for alloy_id in low} == {"one-phase"}
    assert {structure(library, alloy_id) for alloy_id in high} == {"two-phase"}


def test_copper_nickel_is_one_phase(library: Library) -> None:
    """Solid solutions from copper to nickel: Princeton, glossary of course MAE 324, phase
    diagram.
    """
    found = [
        alloy_id
        for alloy_id, alloy in library.alloys.items()
        if alloy.composition.get("Ni", 0) >= 5
        and alloy.composition.get("Cu", 0) > 50
        and set(alloy.composition) <= {"Cu", "Ni", "Fe", "Mn"}
    ]
    assert "copper/cupronickel-10" in found
    assert {structure(library, alloy_id) for alloy_id in found} == {"one-phase"}


def test_gold_silver_is_one_phase(library: Library) -> None:
    """Homogeneous over the whole series: Rose, Metallurgy of Gold, Table XII; Okamoto and
    Massalski, the Ag-Au system.
    """
    found = [alloy_id for alloy_id, _ in made_of(library, "Au", "Ag")]
    assert "gold/18ct-green" in found
    assert {structure(library, alloy_id) for alloy_id in found} == {"one-phase"}


def test_gold_of_three_quarters_with_much_copper_orders(library: Library) -> None:
    """AuCu I in Au 75 Cu 16.25 Ag 8.75: abstract indexed by Scilit; alloys near CuAu: Great Soviet
    Encyclopedia.
    """
    found = [
        alloy_id
        for alloy_id, alloy in library.alloys.items()
        if 74 <= alloy.composition.get("Au", 0) <= 76
        and alloy.composition.get("Cu", 0) >= 15
        and set(alloy.composition) <= {"Au", "Ag", "Cu", "Zn"}
    ]
    assert "gold/18ct-rose" in found
    assert {structure(library, alloy_id) for alloy_id in found} == {"ordering"}


def test_unalloyed_metals_are_one_phase(library: Library) -> None:
    """What holds hardly anything else has nothing that could part, age or order."""
    pure = [
        name for name, alloy in library.alloys.items() if max(alloy.composition.values()) == 100
    ]
    assert len(pure) >= 5
    assert {structure(library, alloy_id) for alloy_id in pure} == {"one-phase"}


# -- what the structure asks of the bench


def test_quench_begins_above_the_band_not_to_linger_in(library: Library) -> None:
    """Quenched from above 425 to 450 degC such golds stay soft: Great Soviet Encyclopedia."""
    compared = 0
    for alloy_id, alloy in library.alloys.items():
        for quench in plain(alloy, "quench-from"):
            for band in plain(alloy, "no-dwell"):
                start, end = quench.ends[0], band.ends[1]
                assert start is not None, alloy_id
                assert end is not None, alloy_id
                assert start >= end, alloy_id
                compared += 1
    assert compared >= 3


def test_ageing_heat_lies_in_the_band_not_to_linger_in(library: Library) -> None:
    """The heat that hardens on purpose is the heat that hardens by mistake: Welz, sheets of the 14
    ct yellow and 18 ct rose alloys. Where the two readings lie apart, the band's reason says so.
    """
    inside: list[str] = []
    told: list[str] = []
    apart: list[str] = []
    for alloy_id, alloy in changing(library):
        for age in plain(alloy, "age"):
            for band in plain(alloy, "no-dwell"):
                low, high = band.ends[0] or 0.0, band.ends[1] or 0.0
                if low <= (age.ends[0] or low) and (age.ends[1] or high) <= high:
                    inside.append(alloy_id)
                elif SPEAKS_OF_IT.search(band.why or ""):
                    told.append(alloy_id)
                else:
                    apart.append(alloy_id)
    assert not apart
    assert {"gold/14ct-yellow", "gold/18ct-rose", "gold/18ct-yellow"} <= set(inside)
    assert not set(told) & set(inside)


def test_alloys_that_order_are_brought_up_fast_and_quenched(library: Library) -> None:
    """Hard and brittle after lingering, soft when quenched: Great Soviet Encyclopedia; water from
    dark red: Welz, sheet of the 18 ct rose alloy.
    """
    ordering = [
        alloy for _, alloy in changing(library) if structure(library, alloy.id) == "ordering"
    ]
    assert len(ordering) >= 3
    for alloy in ordering:
        assert alloy.quench, alloy.id
        assert alloy.quench.rule in ("water", "water-after-glow"), alloy.id
        assert not alloy.heating or alloy.heating.rule == "fast", alloy.id


@pytest.mark.parametrize("alloy_id", ["copper/nickel-silver", "gold/18ct-nickel-white"])
def test_metal_that_cracks_as_it_is_heated_is_warmed_slowly(
    library: Library, alloy_id: str
) -> None:
    """Strained nickel silver cracks as it is heated: AIME, 1926; nickel white gold breaks by
    itself in the anneal: Normandeau and Ueno, Santa Fe Symposium 2002.
    """
    heating = library.alloys[alloy_id].heating
    assert heating
    assert heating.rule == "slow"
