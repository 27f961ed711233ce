"""Light of hot metal as printed: chromaticities, sRGB, corrections of an optical pyrometer."""

from __future__ import annotations

import math
from typing import Any

import pytest

from temperbook.derive import tables
from temperbook.metal import brightness, heat_colour, register
from temperbook.records.load import Library
from tests.metal.published import table

ZERO = 273.15


@pytest.fixture(scope="module")
def known(library: Library) -> dict[str, Any]:
    """The handbook's observer and names of colours."""
    return tables.made(["observer", "colour-names"], library)


def colour(kelvin: float, known: dict[str, Any]) -> dict[str, Any]:
    return register.compute("heat-colour", {"temperature": kelvin - ZERO}, known).outputs


# Kelvin | x | y of a black body, CIE 1931 2 degree observer. Source: Radiance project, file
# blackbody.cal, arrays cct_x and cct_y, index (T - 1000)/50 + 1 (ten of its rows).
# tests/metal/test_heat_colour.py holds the same values against the scale of the chart.
PLANCKIAN = table("""
1000 | 0.6527561 | 0.3444569
1050 | 0.6457256 | 0.3506010
1150 | 0.6318698 | 0.3621137
1200 | 0.6250510 | 0.3674494
1250 | 0.6183069 | 0.3724897
1300 | 0.6116381 | 0.3772277
1350 | 0.6050450 | 0.3816595
1450 | 0.5920879 | 0.3896022
1550 | 0.5794412 | 0.3963348
1600 | 0.5732371 | 0.3992608
""")


@pytest.mark.parametrize("row", PLANCKIAN, ids=lambda row: f"{row[0]} K")
def test_chromaticities_through_the_register(row: list[str], known: dict[str, Any]) -> None:
    """Within 0.00002, the step of the table that the handbook sums over."""
    kelvin, x, y = map(float, row)
    found = colour(kelvin, known)
    assert (found["x"], found["y"]) == pytest.approx((x, y), abs=2e-5)
    assert found["in-gamut"] is False


# x | y for 1000 K on a page that uses other functions of the eye than CIE 1931. Source: Mitchell
# Charity, What color is a blackbody?, rows 1000 K.
OTHER_EYES = table("""
2deg  | 0.6499 | 0.3474
10deg | 0.6472 | 0.3506
""")


@pytest.mark.parametrize(("row", "off"), [(OTHER_EYES[0], -0.0029), (OTHER_EYES[1], -0.0056)])
def test_a_list_that_is_not_of_this_observer(
    row: list[str], off: float, known: dict[str, Any]
) -> None:
    """Its x lies as far from the CIE 1931 value as said, over a hundred times our own error."""
    found = colour(1000, known)
    assert float(row[1]) - found["x"] == pytest.approx(off, abs=5e-5)
    assert float(row[2]) - found["y"] == pytest.approx(-off, abs=6e-4)


# -- sRGB, as IEC 61966-2-1:1999 and ITU-R BT.709 have it. Source: documentation of the colour
# library (colour-science), data set sRGB.

Matrix = tuple[tuple[float, float, float], ...]

# The third entry of the last row was cut off in the copy.
TO_RGB = ((3.2406, -1.5372, -0.4986), (-0.9689, 1.8758, 0.0415), (0.0557, -0.2040, None))
TO_XYZ: Matrix = (
    (0.4124, 0.3576, 0.1805),
    (0.2126, 0.7152, 0.0722),
    (0.0193, 0.1192, 0.9505),
)
PRIMARIES = {"red": (0.64, 0.33), "green": (0.30, 0.60), "blue": (0.15, 0.06)}
WHITE = (0.3127, 0.3290)


def inverse(m: Matrix) -> Matrix:
    """Of a matrix of three rows, by its cofactors."""

    def minor(row: int, column: int) -> float:
        a, b = (r for r in range(3) if r != row)
        c, d = (k for k in range(3) if k != column)
        sign = 1.0 if (row + column) % 2 == 0 else -1.0
        return sign * (m[a][c] * m[b][d] - m[a][d] * m[b][c])

    whole = sum(m[0][column] * minor(0, column) for column in range(3))
    rows = [tuple(minor(row, column) / whole for row in range(3)) for column in range(3)]
    return tuple((row[0], row[1], row[2]) for row in rows)


def chromaticity(x: float, y: float, z: float) -> tuple[float, float]:
    return x / (x + y + z), y / (x + y + z)


def test_the_printed_matrix_to_rgb() -> None:
    """Within 0.0004: four places, of a matrix that was turned round after rounding."""
    pairs = [
        (printed, ours)
        for row, own in zip(TO_RGB, heat_colour.SRGB_FROM_XYZ, strict=True)
        for printed, ours in zip(row, own, strict=True)
        if printed is not None
    ]
    assert len(pairs) == 8
    assert all(ours == pytest.approx(printed, abs=0.0004) for printed, ours in pairs)


def test_the_printed_matrix_to_xyz() -> None:
    """Within 0.0002."""
    back = inverse(heat_colour.SRGB_FROM_XYZ)
    for printed, ours in zip(TO_XYZ, back, strict=True):
        assert ours == pytest.approx(printed, abs=2e-4)


def test_primaries_and_white() -> None:
    """Full red, green, blue and all three together have the printed chromaticities, to four places;
    of the white within 0.00015.
    """
    columns = list(zip(*inverse(heat_colour.SRGB_FROM_XYZ), strict=True))
    for column, printed in zip(columns, PRIMARIES.values(), strict=True):
        assert chromaticity(*column) == pytest.approx(printed, abs=1e-4)
    white = [sum(axis) for axis in zip(*columns, strict=True)]
    assert chromaticity(white[0], white[1], white[2]) == pytest.approx(WHITE, abs=1.5e-4)


def test_a_hue_is_clipped_exactly_where_it_leaves_the_triangle(known: dict[str, Any]) -> None:
    """A black body leaves sRGB's triangle through the side of red and green: beyond the line
    between the printed primaries the formula says that it is out of gamut.
    """
    (rx, ry), (gx, gy) = PRIMARIES["red"], PRIMARIES["green"]
    for celsius in range(400, 2400, 25):
        found = colour(celsius + ZERO, known)
        beyond = (gx - rx) * (found["y"] - ry) - (gy - ry) * (found["x"] - rx)
        if abs(beyond) > 1e-5:
            assert found["in-gamut"] is (beyond > 0), celsius


# -- radiation


def test_constants_as_published() -> None:
    """CODATA 2018, as reference libraries carry it: second radiation constant, and the first for
    spectral radiance.
    """
    assert pytest.approx(0.01438776877, abs=1e-11) == brightness.SECOND_RADIATION
    first = 2 * heat_colour.PLANCK * heat_colour.LIGHT**2
    assert first == pytest.approx(1.191042972e-16, rel=1e-9)


def test_the_draper_point_as_published() -> None:
    """An encyclopaedia's article (mirrors of it): at 798 K a black body is brightest at 3.6 um and
    gives 23 kilowatts a square metre.
    """
    waves = [1e-8 * (step + 0.5) for step in range(20000)]
    radiance = [heat_colour.planck_radiance(wave, 798) for wave in waves]
    assert 1e6 * waves[radiance.index(max(radiance))] == pytest.approx(3.6, abs=0.05)
    assert math.pi * sum(radiance) * 1e-8 / 1000 == pytest.approx(23, abs=0.5)


# -- optical pyrometer

EMISSIVITIES = (0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9)
# Apparent temperature [degC] | what to add [K] at each emissivity, 0.65 um. Source: National
# Physical Laboratory, Tables of physical and chemical constants, 2.3.4 (kaye-laby-pyrometer).
CORRECTIONS = table("""
600  | 87  | 59  | 44  | 33  | 25  | 18  | 12 | 8  | 4
800  | 135 | 91  | 67  | 50  | 37  | 27  | 19 | 12 | 6
1000 | 194 | 130 | 95  | 71  | 53  | 39  | 27 | 17 | 8
1200 | 267 | 177 | 128 | 96  | 71  | 52  | 36 | 22 | 10
1400 | 353 | 232 | 168 | 125 | 93  | 67  | 46 | 29 | 13
1600 | 453 | 295 | 212 | 157 | 117 | 85  | 58 | 36 | 17
1800 | 570 | 368 | 263 | 195 | 144 | 104 | 72 | 44 | 21
2000 | 704 | 450 | 321 | 236 | 174 | 126 | 86 | 53 | 25
""")
CELLS = [
    (float(apparent), emissivity, float(added))
    for apparent, *row in CORRECTIONS
    for emissivity, added in zip(EMISSIVITIES, row, strict=True)
]


@pytest.mark.parametrize(("apparent", "emissivity", "added"), CELLS)
def test_every_printed_correction(apparent: float, emissivity: float, added: float) -> None:
    """All 72 cells, each to the printed kelvin and no worse; and back again."""
    surface = {"emissivity": emissivity}
    there = register.compute(
        "brightness-temperature", {"temperature": apparent, **surface, "find": True}
    )
    true = there.outputs["temperature"]
    assert abs(true - apparent - added) <= 0.5
    assert not there.notes  # Wien's law serves over the whole of the table
    back = register.compute("brightness-temperature", {"temperature": true, **surface})
    assert back.outputs["temperature"] == pytest.approx(apparent, abs=1e-6)


def test_the_table_is_whole() -> None:
    assert len(CELLS) == len(set(CELLS)) == 72
