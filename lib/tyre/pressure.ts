import { requireInRange } from "../check.js";

const ATMOSPHERE = 101325; // Pa, standard atmosphere – ISO 2533:1975
const FREEZING = 273.15; // K at 0 °C, exact – BIPM SI Brochure
const loadExponent = 0.87; // – Tse 2024, gross contact area
const pressureExponent = -0.51; // – Tse 2024, gross contact area

/** A tyre's air when it was set, and how warm it is now. */
export interface PressureChange {
  /** Pressure above atmosphere when it was set, Pa. */
  readonly coldPressure: number;
  /** Temperature of the air in the tyre when it was set, °C. */
  readonly coldTemperature: number;
  /** Temperature of the air in the tyre now, °C. */
  readonly hotTemperature: number;
  /** Pressure of the air outside, Pa; left out: sea level. */
  readonly atmosphere?: number;
}

/**
 * Pressure of warm tyre air above atmosphere, Pa: the absolute pressure of a sealed ideal gas of
 * constant volume goes with absolute temperature.
 *
 * @throws Refusal for pressures outside 0–1 MPa and temperatures outside −50–200 °C
 * @example
 * hotPressure({ coldPressure: 170e3, coldTemperature: 20, hotTemperature: 60 })
 * // → 207022, by hand: (170 + 101.325)·333.15/293.15 − 101.325 kPa
 */
export function hotPressure(air: PressureChange): number {
  const { coldPressure, coldTemperature, hotTemperature, atmosphere = ATMOSPHERE } = air;
  requireInRange("cold pressure", coldPressure, 0, 1e6, "Pa");
  requireInRange("cold temperature", coldTemperature, -50, 200, "°C");
  requireInRange("hot temperature", hotTemperature, -50, 200, "°C");
  requireInRange("atmosphere", atmosphere, 5e4, 1.2e5, "Pa");
  const warming = (hotTemperature + FREEZING) / (coldTemperature + FREEZING);
  return (coldPressure + atmosphere) * warming - atmosphere; // p1/T1 = p2/T2
}

/**
 * Cold pressure to set, Pa, so that the tyre reaches a pressure when warm; may come out below zero.
 *
 * @throws Refusal as `hotPressure`
 * @example
 * coldPressureFor({ hotPressure: 207022, coldTemperature: 20, hotTemperature: 60 })
 * // → 170000, by hand: the same backwards
 */
export function coldPressureFor(
  wanted: Omit<PressureChange, "coldPressure"> & { readonly hotPressure: number },
): number {
  const { coldTemperature, hotTemperature, atmosphere } = wanted;
  const swapped = { coldTemperature: hotTemperature, hotTemperature: coldTemperature };
  return hotPressure({
    coldPressure: wanted.hotPressure,
    ...swapped,
    ...(atmosphere === undefined ? {} : { atmosphere }),
  });
}

/**
 * How much pressure rises with each kelvin, Pa/K: absolute pressure over absolute temperature.
 *
 * @example
 * pressureRisePerKelvin(200e3, 20) // → 1027.9, by hand: 301 325/293.15
 */
export function pressureRisePerKelvin(
  coldPressure: number,
  coldTemperature: number,
  atmosphere = ATMOSPHERE,
): number {
  requireInRange("cold pressure", coldPressure, 0, 1e6, "Pa");
  requireInRange("cold temperature", coldTemperature, -50, 200, "°C");
  return (coldPressure + atmosphere) / (coldTemperature + FREEZING);
}

/** Contact area measured once, and the load and pressure it was measured at. */
export interface MeasuredPatch {
  /** m². */
  readonly area: number;
  /** N. */
  readonly load: number;
  /** Pa above atmosphere. */
  readonly pressure: number;
}

/**
 * Gross contact area at another load and pressure, m²: A ∝ F^0.87 p^−0.51, not F/p, because the
 * carcass carries part of the load – Tse 2024.
 *
 * @param measured - the patch the new one is scaled from
 * @param load - N, above zero
 * @param pressure - Pa above atmosphere, above zero
 * @example
 * patchArea({ area: 0.012, load: 3000, pressure: 200e3 }, 4000, 180e3)
 * // → 0.01626, by hand: 0.012·(4/3)^0.87·0.9^−0.51
 */
export function patchArea(measured: MeasuredPatch, load: number, pressure: number): number {
  requireInRange("load", load, 0, 1e5, "N");
  requireInRange("pressure", pressure, 1e3, 1e6, "Pa");
  const byLoad = (load / measured.load) ** loadExponent;
  return measured.area * byLoad * (pressure / measured.pressure) ** pressureExponent;
}

/** Mean pressure of the tyre on the road, Pa: load over gross area. */
export function meanContactPressure(load: number, area: number): number {
  requireInRange("area", area, 1e-6, 1, "m²");
  return load / area;
}
