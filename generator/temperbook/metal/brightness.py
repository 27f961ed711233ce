"""Why bright metal looks cooler than it is: brightness temperature by Wien's law."""

from __future__ import annotations

import math

SECOND_RADIATION = 0.014387768775  # m K, SI 2019 (h c / k)
ZERO_CELSIUS = 273.15
WIEN = 3000.0  # um K, up to which the approximation serves


def apparent(temperature: float, emissivity: float, wavelength: float = 0.65) -> float:
    """Temperature [degC] of a black body as bright as a surface at `temperature` [degC].

    emissivity: of the surface at the wavelength [1]. wavelength: [um]. Valid for: Wien's
    approximation, wavelength times kelvin below 3000 um K. Formula: 1/Ta = 1/T - (L/c2) ln e.
    Source: kaye-laby-pyrometer. Example: apparent(687, 0.1) -> 600
    """
    _hold(temperature, emissivity, wavelength)
    inverse = 1 / (temperature + ZERO_CELSIUS) - _term(emissivity, wavelength)
    return 1 / inverse - ZERO_CELSIUS


def true(apparent_temperature: float, emissivity: float, wavelength: float = 0.65) -> float:
    """True temperature [degC] of a surface that looks like a black body at `apparent_temperature`.

    The inverse of `apparent`, with the same validity. Example: true(600, 0.1) -> 687
    """
    _hold(apparent_temperature, emissivity, wavelength)
    inverse = 1 / (apparent_temperature + ZERO_CELSIUS) + _term(emissivity, wavelength)
    if inverse <= 0:
        raise ValueError("no surface of this emissivity can look so hot")
    return 1 / inverse - ZERO_CELSIUS


def _term(emissivity: float, wavelength: float) -> float:
    return wavelength * 1e-6 / SECOND_RADIATION * math.log(emissivity)


def within_wien(temperature: float, wavelength: float) -> bool:
    """Whether Wien's approximation holds serves: temperature [degC], wavelength [um].

    Formula: wavelength times kelvin below 3000 um K.
    """
    return wavelength * (temperature + ZERO_CELSIUS) < WIEN


def _hold(temperature: float, emissivity: float, wavelength: float) -> None:
    if temperature <= -ZERO_CELSIUS:
        raise ValueError("a temperature lies above -273.15 degC")
    if not 0 < emissivity <= 1:
        raise ValueError("an emissivity lies above 0 and at most at 1")
    if not 0.3 <= wavelength <= 2:
        raise ValueError("a wavelength of a pyrometer lies between 0.3 and 2 um")
