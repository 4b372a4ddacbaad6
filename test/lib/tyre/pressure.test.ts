import fc from "fast-check";
import { expect, test } from "vitest";
import {
  coldPressureFor,
  hotPressure,
  meanContactPressure,
  patchArea,
  pressureRisePerKelvin,
} from "../../../lib/tyre/pressure.js";
import { between } from "../evenly.js";

test("at 2 bar and 20 °C a sealed tyre gains 1.03 kPa for each kelvin", () => {
  // ideal gas: (200 + 101.325) / 293.15 = 1.0279 kPa/K, by hand
  expect(pressureRisePerKelvin(200e3, 20)).toBeCloseTo(1027.9, 1);
  const air = { coldPressure: 200e3, coldTemperature: 20, hotTemperature: 21 };
  expect(hotPressure(air) - 200e3).toBeCloseTo(1027.9, 1);
});

test("from 20 to 60 °C a tyre set to 170 kPa reaches 207.0 kPa", () => {
  // (170 + 101.325) × 333.15 / 293.15 − 101.325 = 207.022 kPa, by hand
  const air = { coldPressure: 170e3, coldTemperature: 20, hotTemperature: 60 };
  expect(hotPressure(air)).toBeCloseTo(207_022, -1);
});

test("the cold pressure for a hot pressure leads back to it", () => {
  const temperature = between(-20, 120);
  fc.assert(
    fc.property(temperature, temperature, (coldTemperature, hotTemperature) => {
      const cold = coldPressureFor({ hotPressure: 300e3, coldTemperature, hotTemperature });
      const air = { coldPressure: cold, coldTemperature, hotTemperature };
      expect(hotPressure(air)).toBeCloseTo(300e3, 6);
    }),
  );
});

test("doubling the pressure shrinks the patch to 70 %, not to half", () => {
  const measured = { area: 0.014, load: 3000, pressure: 200e3 };
  // Tse 2024, exponent −0.51: 2^−0.51 = 0.7022
  expect(patchArea(measured, 3000, 400e3) / 0.014).toBeCloseTo(0.7022, 4);
  // Tse 2024, exponent 0.87: 2^0.87 = 1.8277
  expect(patchArea(measured, 6000, 200e3) / 0.014).toBeCloseTo(1.8277, 4);
});

test("contact pressure is load over area, by hand 3000 N on 150 cm²", () => {
  expect(meanContactPressure(3000, 0.015)).toBeCloseTo(200e3, 6);
});

test("temperatures and pressures that make no sense are refused", () => {
  const air = { coldPressure: 200e3, coldTemperature: 20, hotTemperature: 60 };
  expect(() => hotPressure({ ...air, coldPressure: -1 })).toThrow(
    "cold pressure is -1 Pa but must be from 0 to 1000000 Pa.",
  );
  expect(() => hotPressure({ ...air, hotTemperature: 900 })).toThrow(RangeError);
  expect(() => patchArea({ area: 0.01, load: 3000, pressure: 2e5 }, NaN, 2e5)).toThrow(RangeError);
});
