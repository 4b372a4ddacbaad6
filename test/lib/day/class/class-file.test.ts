import { describe, expect, it } from "vitest";
import { demoCar } from "../../../../lib/car/demo-car.js";
import { formatCar, parseCar } from "../../../../lib/car/file/parse.js";
import {
  type CarClass,
  carInClass,
  classFromJson,
  factsInClass,
  formatClass,
  parseClass,
} from "../../../../lib/day/class/class-file.js";
import { exampleVenue } from "../../../../lib/day/example/example-venue.js";
import { referenceTyreCoefficients } from "../../../../lib/tyre/reference-tyre.js";
import { dataOfTyre } from "../../../../lib/tyre/tyre-data.js";

const club: CarClass = {
  name: "Club, winter rules",
  rules: [
    { kind: "rideHeight", name: "4.1", least: 0.12 },
    { kind: "springRate", end: "front", least: 50e3, greatest: 70e3 },
    { kind: "fixed", levers: ["rollCentreHeight"] },
    { kind: "tyre", tyre: "club" },
  ],
  baseCar: demoCar,
  venue: exampleVenue,
  briefing: "Helmets on before the engine starts.",
  course: "https://club.example/rollbook/",
};
const json = (change: object) => ({ ...(JSON.parse(formatClass(club)) as object), ...change });
const faults = (change: object) => classFromJson(json(change)).faults;

describe("a class file", () => {
  it("is read as it was written, with fields of others and of its car", () => {
    expect(parseClass(formatClass(club))).toEqual({ carClass: club, notes: [] });
    const more = { ...club, colour: "green", baseCar: { ...demoCar, stripe: 3 } };
    expect(parseClass(formatClass(more))).toEqual({
      carClass: more,
      notes: [
        "colour is not a field this workbook knows: it is kept as it is.",
        "baseCar: stripe is not a field this workbook knows: it is kept as it is.",
      ],
    });
  });

  it("brings along a control tyre, on which a car runs and against which its own is held", () => {
    const own = { name: "Club control", coefficients: dataOfTyre(referenceTyreCoefficients) };
    const rules = [{ kind: "tyre", name: "4.4", tyre: "own", own }] as const;
    expect(parseClass(formatClass({ ...club, rules })).carClass?.rules).toEqual(rules);
    const ran = carInClass(demoCar, { rules });
    expect(ran.front.tyre).toEqual({
      ...{ name: "own", data: own.coefficients },
      pressure: demoCar.front.tyre.pressure,
    });
    const standing = (car: typeof demoCar) => factsInClass(car, { rules }).map(({ held }) => held);
    expect(factsInClass(demoCar, { rules })[1]).toEqual({
      ...{ code: "tyre", rule: "4.4", where: "rear", value: "club", limit: "Club control" },
      held: false,
    });
    expect(standing(ran)).toEqual([true, true]);
    const { PKY1: _, ...lacking } = own.coefficients;
    expect(faults({ rules: [{ kind: "tyre", tyre: "own" }] })).toEqual([
      'rules.0.own is missing but must be given where tyre is "own".',
    ]);
    expect(faults({ rules: [{ ...rules[0], own: { ...own, coefficients: lacking } }] })).toEqual([
      "rules.0.own.coefficients: missing, and a tyre cannot do without: PKY1.",
    ]);
  });

  it("is refused with all that is wrong, each with field, value and what is allowed", () => {
    expect(faults({ rules: [{ kind: "rideHeight", least: 12 }, { kind: "grip" }] })).toEqual([
      "rules.0.least is 12 m but must be from 0.02 to 0.4 m (20 to 400 mm).",
      expect.stringMatching(/^rules\.1\.kind is "grip" but must be one of: rideHeight, track, /),
    ]);
    expect(
      faults({ rules: [{ kind: "mass", least: 900, greatest: 800 }, { kind: "toe" }] }),
    ).toEqual([
      "rules.0.least is 900 kg but must be at most the greatest, 800 kg.",
      "rules.1.least is missing but must be given, or rules.1.greatest.",
    ]);
    expect(faults({ course: "javascript:alert(1)" })).toEqual([
      'course is "javascript:alert(1)" but must be an address that begins with https:// or http://.',
    ]);
    expect(faults({ baseCar: { name: "x" } })?.[0]).toMatch(/^baseCar: wheelbase /);
    expect(faults({ version: 2 })).toEqual(["version is 2 but must be 1."]);
    expect(classFromJson({ ...club }).faults).toEqual([
      'The file must be one JSON object whose kind is "rollbook class".',
    ]);
  });

  it("gives a car its rules, and the car's file carries them", () => {
    const car = carInClass(demoCar, club);
    const { classRules: _, ...rest } = car;
    expect(rest).toEqual(demoCar);
    expect(parseCar(formatCar(car))).toEqual({ car, notes: [] });
  });
});
