// Why bright metal looks cooler than it is: brightness temperature by Wien's law.
import { refuse } from "./guards.js";

const SECOND_RADIATION = 0.014387768775; // m K, SI 2019 (h c / k)
const ZERO_CELSIUS = 273.15;
const WIEN = 3000; // um K, up to which the approximation serves

// Temperature [degC] of a black body as bright as a surface at a temperature [degC]; wavelength [um].
export function apparent(temperature, emissivity, wavelength) {
  hold(temperature, emissivity, wavelength);
  return 1 / (1 / (temperature + ZERO_CELSIUS) - term(emissivity, wavelength)) - ZERO_CELSIUS;
}

// True temperature [degC] of a surface that looks like a black body at a temperature [degC].
export function trueOf(apparentTemperature, emissivity, wavelength) {
  hold(apparentTemperature, emissivity, wavelength);
  const inverse = 1 / (apparentTemperature + ZERO_CELSIUS) + term(emissivity, wavelength);
  if (inverse <= 0) refuse("no surface of this emissivity can look so hot");
  return 1 / inverse - ZERO_CELSIUS;
}

const term = (emissivity, wavelength) => ((wavelength * 1e-6) / SECOND_RADIATION) * Math.log(emissivity);

function hold(temperature, emissivity, wavelength) {
  if (temperature <= -ZERO_CELSIUS) refuse("a temperature lies above -273.15 degC");
  if (!(emissivity > 0 && emissivity <= 1)) refuse("an emissivity lies above 0 and at most at 1");
  if (!(wavelength >= 0.3 && wavelength <= 2)) {
    refuse("a wavelength of a pyrometer lies between 0.3 and 2 um");
  }
}

function brightnessTemperature({ temperature, emissivity, wavelength, find }) {
  const found = (find ? trueOf : apparent)(temperature, emissivity, wavelength);
  const hotter = Math.max(found, temperature);
  const serves = wavelength * (hotter + ZERO_CELSIUS) < WIEN;
  return { outputs: { temperature: found }, notes: serves ? [] : [["beyond-wien"]] };
}

export const RUNS = { "brightness-temperature": brightnessTemperature };
