"""What a glowing black body looks like, against references that share no code and no table with
ours.
"""

from __future__ import annotations

import math
import re
import warnings
from itertools import pairwise

import pytest
import scipy.constants
from hypothesis import given
from hypothesis import strategies as st

from temperbook.derive.glow import GlowScale, scale
from temperbook.metal import heat_colour, register
from temperbook.metal.heat_colour import BRIGHTEST, DIMMEST, SOOT
from temperbook.paths import Project

ZERO = 273.15
# Chromaticity x, y of a black body [K], CIE 1931 standard observer.
# Source: Radiance project, cct_x and cct_y arrays (index = (T - 1000) / 50 + 1).
RADIANCE = {
    1000: (0.6527561, 0.3444569),
    1050: (0.6457256, 0.3506010),
    1150: (0.6318698, 0.3621137),
    1200: (0.6250510, 0.3674494),
    1250: (0.6183069, 0.3724897),
    1300: (0.6116381, 0.3772277),
    1350: (0.6050450, 0.3816595),
    1450: (0.5920879, 0.3896022),
    1550: (0.5794412, 0.3963348),
    1600: (0.5732371, 0.3992608),
}


@pytest.fixture(scope="module")
def glow(project: Project) -> GlowScale:
    return scale(project)


def colour_science(kelvin: float) -> tuple[float, float, float]:
    """x, y and luminance [cd/m2] by colour-science: its observer at 1 nm and its Planck's law."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # it warns of optional parts that are not installed
        import colour

    observer = colour.MSDS_CMFS["CIE 1931 2 Degree Standard Observer"]
    observer = observer.copy().align(colour.SpectralShape(360, 830, 1))
    c = scipy.constants
    radiance = colour.colorimetry.planck_law(
        observer.wavelengths * 1e-9, kelvin, c1=2 * math.pi * c.h * c.c**2, c2=c.h * c.c / c.k
    )
    x, y, z = radiance @ observer.values * 1e-9
    return x / (x + y + z), y / (x + y + z), 683.002 * y


@pytest.mark.parametrize("kelvin", [800, 900, 1000, 1100, 1200, 1300, 1400, 1500, 1600])
def test_against_colour_science(kelvin: int, glow: GlowScale) -> None:
    """Source: colour-science 0.4, CIE 1931 2 degree observer at 1 nm, planck_law with the constants
    of scipy.
    """
    x, y, luminance = colour_science(kelvin)
    seen = glow.seen(kelvin - ZERO)
    assert seen.x == pytest.approx(x, abs=1e-4)
    assert seen.y == pytest.approx(y, abs=1e-4)
    assert seen.luminance == pytest.approx(luminance, rel=1e-4)


@pytest.mark.parametrize("kelvin", RADIANCE)
def test_against_published_chromaticities(kelvin: int, glow: GlowScale) -> None:
    """Source: Radiance project, cct_x and cct_y arrays."""
    seen = glow.seen(kelvin - ZERO)
    assert (seen.x, seen.y) == pytest.approx(RADIANCE[kelvin], abs=2e-5)


def test_constants() -> None:
    """Source: SI 2019 as scipy.constants gives it."""
    c = scipy.constants
    assert c.h == heat_colour.PLANCK
    assert c.c == heat_colour.LIGHT
    assert c.k == heat_colour.BOLTZMANN
    assert c.zero_Celsius == heat_colour.ZERO_CELSIUS


@pytest.mark.parametrize("kelvin", [800, 1200, 2000])
def test_wien(kelvin: int) -> None:
    """The peak lies where Wien's displacement law puts it.

    Source: scipy.constants, 2.897771955e-3 m K.
    """
    peak = scipy.constants.Wien / kelvin
    at_peak = heat_colour.planck_radiance(peak, kelvin)
    for aside in (0.99, 1.01):
        assert heat_colour.planck_radiance(peak * aside, kelvin) < at_peak


@pytest.mark.parametrize("kelvin", [800, 1600])
def test_stefan_boltzmann(kelvin: int) -> None:
    """Radiance over all wavelengths is sigma T^4 / pi. Source: scipy.constants."""
    step = 1e-8
    waves = (step * (n + 0.5) for n in range(20000))
    whole = sum(heat_colour.planck_radiance(wave, kelvin) for wave in waves) * step
    assert whole == pytest.approx(scipy.constants.sigma * kelvin**4 / math.pi, rel=1e-3)


def test_first_glow(glow: GlowScale) -> None:
    """Draper (1847) saw the first red of several solids at 525 degC in a darkened room
    (bench/glow#first-glow).

    The eye is leaving night vision there: between 0.004 and 0.02 cd/m2.
    """
    assert 0.004 < glow.seen(525).luminance < 0.02
    assert glow.seen(450).luminance < 0.004


def test_reds_lie_outside_what_a_screen_shows(glow: GlowScale) -> None:
    """All heats below 700 degC are redder than sRGB's own red, x = 0.640, y = 0.330 (IEC
    61966-2-1).
    """
    for temperature in range(400, 700, 10):
        seen = glow.seen(temperature)
        assert not seen.in_gamut
        assert seen.x > 0.640
        assert seen.hue[0] == 1
        assert seen.hue[2] == 0
    assert not glow.seen(1500).in_gamut
    assert glow.seen(1700).in_gamut


def test_hotter_is_brighter(glow: GlowScale) -> None:
    """Luminance rises with every step, and the brightness that is shown never falls."""
    shown = [glow.colour(t) for t in range(300, 1300, 5)]
    luminances = [glow.seen(t).luminance for t in range(300, 1300, 5)]
    assert luminances == sorted(luminances)
    assert len(set(luminances)) == len(luminances)
    weights = (0.2126, 0.7152, 0.0722)  # of sRGB's channels, IEC 61966-2-1

    def brightness(colour: str) -> float:
        channels = (int(colour[i : i + 2], 16) for i in (1, 3, 5))
        return sum(w * c for w, c in zip(weights, channels, strict=True))

    seen = [brightness(colour) for colour in shown]
    # Unlit soot is grey: as red takes its place the two other channels fall, by a few steps in all.
    assert all(later >= earlier - 0.6 for earlier, later in pairwise(seen))
    assert seen[-1] > 3 * seen[0]


def test_dark_metal_is_soot(glow: GlowScale) -> None:
    soot = "#" + "".join(f"{channel:02x}" for channel in SOOT)
    for temperature in (20, 300, 400, 480):
        assert glow.colour(temperature) == soot
    assert glow.colour(560) != soot


@given(temperature=st.floats(300, 3000))
def test_any_heat_has_a_colour(temperature: float, glow: GlowScale) -> None:
    assert re.fullmatch("#[0-9a-f]{6}", glow.colour(temperature))
    seen = glow.seen(temperature)
    assert max(seen.hue) == 1
    assert min(seen.hue) >= 0
    assert 0 < seen.x < 1
    assert 0 < seen.y < 1


def test_scale_of_brightness_is_logarithmic() -> None:
    """Half-way in the logarithm is half-way between soot and full hue.

    Source: our own choice, said on every scale.
    """
    half = 1.001 * math.sqrt(DIMMEST * BRIGHTEST)
    seen = heat_colour.Glow(0.6, 0.4, half, False, (1.0, 0.0, 0.0))
    assert heat_colour.shown_colour(seen, (0, 0, 0), DIMMEST, BRIGHTEST) == "#800000"
    full = heat_colour.Glow(0.6, 0.4, 2 * BRIGHTEST, False, (1.0, 0.5, 0.0))
    assert heat_colour.shown_colour(full, (0, 0, 0), DIMMEST, BRIGHTEST) == "#ffbc00"


# -- the registered formula

NAMES = {"one": [["dark red", 550.0, 600.0], ["cherry", 700.0, 750.0], ["red", 740.0, 800.0]]}


@pytest.mark.parametrize("kelvin", [1000, 1200, 1600])
def test_the_formula_says_what_is_published(kelvin: int, glow: GlowScale) -> None:
    """Source: Radiance project; the colour code is the chart's own."""
    tables = {"observer": glow.observer, "colour-names": {}}
    found = register.compute("heat-colour", {"temperature": kelvin - ZERO}, tables).outputs
    assert (found["x"], found["y"]) == pytest.approx(RADIANCE[kelvin], abs=2e-5)
    assert found["hex"] == glow.colour(kelvin - ZERO)
    assert found["in-gamut"] is False


def test_it_says_that_bright_metal_is_no_black_body(glow: GlowScale) -> None:
    tables = {"observer": glow.observer, "colour-names": NAMES}
    formula = register.FORMULAS["heat-colour"]
    hot = register.compute("heat-colour", {"temperature": 650}, tables)
    assert "bright metal" in dict(formula.said(hot))["formula"]
    assert "clipped" in dict(formula.said(hot))
    white = register.compute("heat-colour", {"temperature": 1700}, tables)
    assert white.outputs["in-gamut"] is True
    assert "clipped" not in dict(formula.said(white))


@pytest.mark.parametrize(
    ("temperature", "said"),
    [
        (500, "below dark red"),
        (550, "dark red"),
        (650, "between dark red and cherry"),
        (745, "cherry or red"),
        (900, "above red"),
    ],
)
def test_what_an_observer_calls_it(temperature: float, said: str) -> None:
    assert heat_colour.named([tuple(row) for row in NAMES["one"]], temperature) == said


@pytest.mark.parametrize("temperature", [20, 299, 3001, -300])
def test_what_does_not_glow(temperature: float, glow: GlowScale) -> None:
    tables = {"observer": glow.observer, "colour-names": {}}
    with pytest.raises(ValueError, match="between 300 and 3000 degC"):
        register.compute("heat-colour", {"temperature": temperature}, tables)
