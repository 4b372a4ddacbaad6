import { describe, expect, it } from "vitest";
import { demoCar } from "../../../lib/car/demo-car.js";
import { USUAL_SPEED } from "../../../lib/change/figures.js";
import { mapAxesOf } from "../../../lib/map/map-axis.js";
import { readMap } from "../../../lib/map/map-reading.js";
import type { Quantity } from "../../../lib/units.js";
import { readingText } from "../../../site/pages/map/tell.js";
import { summaryOf } from "../../../site/pages/your-car/model/summary.js";
import { formatAlike } from "../../../site/say/shown-range.js";
import { format } from "../../../site/say/units.js";

const told = (car = demoCar) =>
  summaryOf(car, "metric", (...given) => format(...given).replace("\u00a0", " "));

describe("what a car comes to", () => {
  it("adds up to what its file says", () => {
    const { weights, corners, axles } = told();
    expect(weights[0]).toEqual(["Together", "1080 kg"]); // 810 + 80 + 30 + 75 + 85
    const onScales = [
      corners.front.left,
      corners.front.right,
      corners.rear.left,
      corners.rear.right,
    ];
    const sum = onScales.reduce((total, text) => total + Number.parseFloat(text), 0);
    expect(Math.abs(sum - 1080)).toBeLessThanOrEqual(2); // four roundings
    const [, front, rear] = axles[0] ?? [];
    expect([front, rear]).toEqual(["25.4 N/mm", "28.1 N/mm"]); // 60 × 0.65², 50 × 0.75²
  });

  it("tells every margin, wheel by wheel, under its limit", () => {
    const { limits } = told();
    expect(limits.map(({ name, at }) => [name, at.length])).toEqual([
      ["Mass at least 1040 kg", 1],
      ["Ride height at least 110 mm", 4],
      ["Tyre pressure at least 150 kPa", 4],
      ["Tyre pressure at most 260 kPa", 4],
      ["Camber at least −3.50°", 4],
    ]);
    expect(limits[1]?.at[0]).toEqual({
      where: "front left",
      value: "130 mm",
      verdict: "inside",
      told: "20 mm to spare",
    });
  });

  it("does not claim more of a margin than a display of whole millimetres shows", () => {
    const at = (leastRideHeight: number) =>
      told({ ...demoCar, limits: { leastRideHeight } }).limits[0]?.at.map(({ verdict }) => verdict);
    expect(at(0.1302)).toEqual(["cannot tell", "cannot tell", "inside", "inside"]);
    expect(at(0.132)).toEqual(["outside", "outside", "inside", "inside"]);
  });

  it("says which end gives up first in each part of a corner", () => {
    const { balance } = told();
    expect(balance.map(([phase]) => phase)).toEqual([
      "Braking in",
      "Turn-in",
      "Middle",
      "Power on",
    ]);
    for (const [, text] of balance)
      expect(text).toMatch(/^up to [\d.]+\sm\/s²: the (front|rear) gives up/);
  });

  it.each(["metric", "us"] as const)("tells balance in the map's numbers, %s", (units) => {
    const show = (...given: [Quantity, number, number]) => formatAlike(...given, units);
    const [along, up] = mapAxesOf(demoCar);
    if (along === undefined || up === undefined) throw new Error("no levers");
    const driving = { speed: USUAL_SPEED };
    const of = { car: demoCar, measured: demoCar, along, up, driving };
    const onMap = readingText(of, readMap(of, along.present, up.present), show);
    const [, middle = ""] = summaryOf(demoCar, units, show).balance[2] ?? [];
    const numbers = (text: string) => text.match(/\d+\.\d+\s(m\/s²|g)/g)?.sort();
    expect(numbers(middle)).toHaveLength(2);
    expect(numbers(onMap.split(": ")[1] ?? "")).toEqual(numbers(middle));
  });

  it("notes a pressure that the tyre's data do not reach, and none of the demo car", () => {
    expect(told().notes.join(" ")).not.toContain("data of the tyre");
    const tyre = { name: "published road", pressure: { left: 270e3, right: 270e3 } };
    const notes = told({ ...demoCar, front: { ...demoCar.front, tyre } }).notes;
    expect(notes.at(-1)).toMatch(/^Front tyre pressure is 270.kPa but the data of the tyre/);
  });

  it("says what the figures at the limit take for granted", () => {
    const { differential: _, ...rear } = demoCar.rear;
    const { notes, bewares } = told({ ...demoCar, rear });
    const all = notes.join(" ");
    expect(all).toContain("Margins take the yaw acceleration as zero");
    expect(all).toContain("what kind of differential the rear axle has");
    expect(all).toContain("Nobody has put in at which pressure the front and rear tyres grip best");
    expect(all).not.toContain("what lean costs");
    expect(told().notes.join(" ")).not.toContain("differential");
    expect(bewares).toEqual([]);
  });

  it("warns of a car that can turn to within a tenth of where it tips over", () => {
    const tall = { ...demoCar, body: { ...demoCar.body, height: 0.72 } };
    expect(told(tall).bewares).toEqual([expect.stringMatching(/^Beware: at turn-in this car can/)]);
  });
});
