"""What a glowing black body looks like: Planck's law seen by the CIE 1931 standard observer.

Up to about 1630 degC its chromaticity lies outside sRGB and its hue is clipped; below about 690
degC nothing but pure red is left, so that brightness does the telling.
Clean bright metal is no black body: it shines far less at the same heat.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

# SI 2019, exact; h and c and k of the International System of Units.
PLANCK = 6.62607015e-34  # J s
LIGHT = 299_792_458.0  # m/s
BOLTZMANN = 1.380649e-23  # J/K
ZERO_CELSIUS = 273.15  # K
MOST_LUMENS = 683.002  # lm/W, of the standard observer at 555 nm

# Linear sRGB from XYZ, IEC 61966-2-1 (D65).
SRGB_FROM_XYZ = (
    (3.2404542, -1.5371385, -0.4985314),
    (-0.9692660, 1.8760108, 0.0415560),
    (0.0556434, -0.2040259, 1.0572252),
)

# What pictures show as unlit soot and as full brightness: our choice, said on every scale.
SOOT = (28, 26, 23)  # sRGB, 0 to 255
DIMMEST, BRIGHTEST = 0.004, 1500.0  # cd/m2
COOLEST, HOTTEST = 300.0, 3000.0  # degC

Observer = Sequence[tuple[float, float, float, float]]


@dataclass(frozen=True)
class Glow:
    """Chromaticity `x`, `y` (CIE 1931), luminance [cd/m2], whether sRGB can show it, linear RGB
    clipped."""

    x: float
    y: float
    luminance: float
    in_gamut: bool
    hue: tuple[float, float, float]


def glow(temperature: float, observer: Observer) -> Glow:
    """The light of a black body at `temperature` [degC].

    observer: rows of wavelength [nm] and the three colour-matching functions, evenly spaced.
    Valid for: 300 to 3000 degC. Formula: Planck's law summed over the observer. Source:
    cie-1931-observer.
    """
    kelvin = temperature + ZERO_CELSIUS
    step = (observer[1][0] - observer[0][0]) * 1e-9
    total = [0.0, 0.0, 0.0]
    for wavelength, *matching in observer:
        radiance = planck_radiance(wavelength * 1e-9, kelvin)
        for axis in range(3):
            total[axis] += radiance * matching[axis] * step
    big_x, big_y, big_z = total
    whole = big_x + big_y + big_z
    rgb = [sum(m * v for m, v in zip(row, total, strict=True)) / big_y for row in SRGB_FROM_XYZ]
    clipped = [max(0.0, channel) for channel in rgb]
    top = max(clipped)
    hue = (clipped[0] / top, clipped[1] / top, clipped[2] / top)
    return Glow(big_x / whole, big_y / whole, MOST_LUMENS * big_y, min(rgb) >= 0, hue)


def hold_glowing(temperature: float) -> None:
    """Holds that a temperature [degC] is one at which metal may glow. Errors: ValueError."""
    if not COOLEST <= temperature <= HOTTEST:
        raise ValueError(f"a heat that glows lies between {COOLEST:g} and {HOTTEST:g} degC")


def planck_radiance(wavelength: float, kelvin: float) -> float:
    """Spectral radiance [W/(m2 sr m)] of a black body at a wavelength [m] and temperature [K]."""
    power = PLANCK * LIGHT / (wavelength * BOLTZMANN * kelvin)
    return 2 * PLANCK * LIGHT**2 / wavelength**5 / math.expm1(min(power, 700.0))


def shown_colour(seen: Glow, floor: tuple[int, int, int], dimmest: float, brightest: float) -> str:
    """`#rrggbb` for screen and paper: the clipped hue, as bright as the logarithm of its luminance.

    floor: the colour of unlit soot [sRGB 0-255]. dimmest, brightest: luminances [cd/m2] shown as
    soot and as full brightness. Valid for: a dim shop and an oxidised surface; the scale of
    brightness is our own choice.
    """
    span = math.log(brightest / dimmest)
    share = min(1.0, max(0.0, math.log(max(seen.luminance, dimmest) / dimmest) / span))
    channels = [
        round(base + (255 * _encoded(hue) - base) * share)
        for base, hue in zip(floor, seen.hue, strict=True)
    ]
    return "#" + "".join(f"{channel:02x}" for channel in channels)


def named(names: Sequence[tuple[str, float, float]], temperature: float) -> str:
    """What an observer calls the light at a temperature [degC].

    names: his words with the lowest and highest temperature [degC] of each, coolest first. Valid
    for: his own shop and eye. Between two words both are said, beyond the ends the nearest one.
    Example: named([("dark red", 550, 600), ("cherry", 700, 750)], 650) -> between dark red and
    cherry
    """
    meeting = [name for name, low, high in names if low <= temperature <= high]
    if meeting:
        return " or ".join(meeting)
    below = [name for name, _, high in names if high < temperature]
    above = [name for name, low, _ in names if low > temperature]
    if below and above:
        return f"between {below[-1]} and {above[0]}"
    return f"above {below[-1]}" if below else f"below {above[0]}"


def _encoded(linear: float) -> float:
    return 12.92 * linear if linear <= 0.0031308 else 1.055 * linear ** (1 / 2.4) - 0.055
