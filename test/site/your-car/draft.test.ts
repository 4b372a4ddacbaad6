import { describe, expect, it } from "vitest";
import { demoCar } from "../../../lib/car/demo-car.js";
import { carFromJson, formatCar } from "../../../lib/car/file/parse.js";
import { firstCar } from "../../../lib/measure/first-car.js";
import type { FirstCar } from "../../../lib/measure/first-car-given.js";
import { placesAsDemo } from "../../../site/pages/your-car/model/as-demo.js";
import {
  asDraft,
  confirmed,
  contentOf,
  copyOfDemo,
  draftOf,
  withoutEntry,
  withPart,
  withTyped,
} from "../../../site/pages/your-car/model/draft.js";
import { faultsOf } from "../../../site/pages/your-car/model/faults.js";
import { valueAt } from "../../../site/pages/your-car/model/path.js";
import { beam } from "../../lib/linkage/reference-corners.js";

const mine = () => copyOfDemo("new-1", "Linnet");
const typed = (...given: readonly [path: string, text: string][]) =>
  given.reduce((draft, [path, text]) => withTyped(draft, path, text, "metric"), mine());
const sentences = (draft = mine(), taken: string[] = []) =>
  faultsOf(draft, taken, "metric").map(({ sentence }) => sentence);

describe("a draft", () => {
  it("that nobody touched is the car it came from, to the last digit", () => {
    const { car } = carFromJson(contentOf(draftOf("x", demoCar)));
    expect(car).toEqual(demoCar);
  });

  it("keeps what was typed as it was typed, sound or not, through the device's store", () => {
    const draft = typed(["rear.track", "one metre"], ["notes", ""], ["front.spring.rate", "70"]);
    const back = asDraft(JSON.parse(JSON.stringify(draft)));
    expect(back).toEqual(draft);
    expect(valueAt(contentOf(draft), "rear.track")).toBeNaN();
    expect(valueAt(contentOf(draft), "front.spring.rate")).toBe(70e3);
  });

  it("from a store that somebody meddled with is dropped, or rid of what is not text", () => {
    for (const broken of [null, 3, [], { id: 1 }, { id: "a", base: 1, typed: {}, own: [] }])
      expect(asDraft(broken)).toBeUndefined();
    const odd = { ...mine(), typed: { name: { text: "A", units: "metric" }, wheelbase: 2 } };
    expect(asDraft(odd)?.typed).toEqual({ name: { text: "A", units: "metric" } });
  });

  it("keeps fields of its file that the page does not know", () => {
    const base = { ...demoCar, name: "Linnet", colour: "green" };
    const { car } = carFromJson(
      contentOf(withTyped(draftOf("x", base), "wheelbase", "2.5", "metric")),
    );
    expect(car && JSON.parse(formatCar(car))).toMatchObject({ colour: "green", wheelbase: 2.5 });
  });

  it("brings a part that was taken out back as it was, with what was typed in it", () => {
    const draft = withTyped(mine(), "driver.mass", "92", "metric");
    const alone = withPart(draft, "driver", undefined);
    expect(contentOf(alone).driver).toBeUndefined();
    const again = withPart(alone, "driver", alone.removed.driver);
    expect(contentOf(again).driver).toEqual({ ...demoCar.driver, mass: 92 });
  });

  it("leaves out what is optional and empty", () => {
    const draft = typed(["limits.leastCamber", ""], ["front.geometry.toeGain", " "]);
    expect(contentOf(draft).limits).not.toHaveProperty("leastCamber");
    expect(valueAt(contentOf(draft), "front.geometry.toeGain")).toBeUndefined();
    expect(sentences(draft)).toEqual([]);
  });

  it("moves what was typed at later positions up when one is taken out", () => {
    const draft = typed(["front.bar.positions.1.rate", "15"], ["front.bar.positions.3.rate", "33"]);
    const shorter = withoutEntry(draft, "front.bar.positions", 1);
    const rates = valueAt(contentOf(shorter), "front.bar.positions");
    expect(rates).toEqual([{ rate: 0 }, { rate: 22e3 }, { rate: 33e3 }, { rate: 46e3 }]);
  });
});

describe("how sure the numbers of a draft's file are", () => {
  const known = {
    "driver.mass": { how: "measured", by: "Jo" },
    "front.bar.positions.1.rate": { how: "maker" },
    "front.bar.positions.3.rate": { how: "estimated" },
  };
  const draft = draftOf("x", { ...demoCar, name: "Linnet", known });
  const knownOf = (of = draft) => carFromJson(contentOf(of)).car?.known;

  it("stays with the car whatever is typed", () => {
    const typedIn = withTyped(draft, "front.bar.positions.1.rate", "15", "metric");
    expect(knownOf(typedIn)).toEqual(known);
  });

  it("goes with a part that is taken out, and comes back with it", () => {
    const alone = withPart(draft, "driver", undefined);
    expect(sentences(alone)).toEqual([]);
    expect(knownOf(alone)).not.toHaveProperty("driver.mass");
    expect(knownOf(withPart(alone, "driver", alone.removed.driver))).toEqual(known);
  });

  it("moves up with the positions of a bar when one is taken out", () => {
    expect(knownOf(withoutEntry(draft, "front.bar.positions", 1))).toEqual({
      "driver.mass": known["driver.mass"],
      "front.bar.positions.2.rate": known["front.bar.positions.3.rate"],
    });
  });
});

describe("a differential on the page", () => {
  it("is put in as a part, and told what its kind needs", () => {
    const rear = withPart(mine(), "rear.differential", { kind: "limited-slip" });
    expect(faultsOf(rear, [], "metric").map(({ path }) => path)).toEqual([
      "rear.differential.power",
      "rear.differential.overrun",
    ]);
    const both = withTyped(
      withTyped(rear, "rear.differential.power", "40", "metric"),
      "rear.differential.overrun",
      "20",
      "metric",
    );
    expect(sentences(both)).toEqual([]);
    expect(carFromJson(contentOf(both)).car?.rear.differential).toEqual({
      kind: "limited-slip",
      power: 0.4,
      overrun: 0.2,
    });
  });
});

describe("the faults of a draft", () => {
  it("are none for a copy of the workbook's own car", () => {
    expect(sentences()).toEqual([]);
  });

  it("are told all at once, each in one sentence with name, range and what was typed", () => {
    const draft = typed(
      ["front.spring.rate", "9000"],
      ["rear.track", "abc"],
      ["rear.camber.left", ""],
      ["front.bar.position", "2.5"],
      ["driver.mass", "-3"],
    );
    expect(sentences(draft)).toEqual([
      "Driver, Mass takes 0 to 200 kg, not −3.",
      "Spring rate, front takes 5 to 400 N/mm, not 9000.",
      "Position in use, front takes a whole number, 1 to 12, not 2.5.",
      "Track, rear takes 0.8 to 2.2 m, not abc.",
      "Camber, rear left takes −6 to 3°; it is empty.",
    ]);
  });

  it("speak the reader's units", () => {
    const draft = withTyped(mine(), "front.spring.rate", "9000", "us");
    const [fault] = faultsOf(draft, [], "us");
    expect(fault?.sentence).toBe("Spring rate, front takes 29 to 2284 lbf/in, not 9000.");
  });

  it("find a name that is empty, taken, too long or the workbook's own", () => {
    const named = (name: string) => sentences(typed(["name", name]), ["Wren"]);
    expect(named("")).toEqual(["Name is empty: give the car a name."]);
    expect(named("Wren")).toEqual(["You have a Wren already: choose another name."]);
    expect(named("Pipit")).toEqual(["Pipit is the workbook’s own car: choose another name."]);
    expect(named("x".repeat(61))).toEqual(["Name takes at most 60 characters."]);
  });

  it("lead to the place where fields only fit together or not", () => {
    const found = (draft = mine()) => faultsOf(draft, [], "metric");
    expect(found(typed(["rear.bar.position", "9"]))).toEqual([
      {
        path: "rear.bar",
        sentence:
          "A bar at the rear, rear: bar position is 9 but must be a whole number from 1 to 4.",
      },
    ]);
    expect(found(typed(["front.adjusters.toe.min", "0.5"]))[0]?.path).toBe(
      "front.adjusters.toe.min",
    );
    expect(found(typed(["body.behindFrontAxle", "-1.4"]))[0]?.path).toBe("body.behindFrontAxle");
    expect(found(typed(["rear.geometry.rollSteer", "0.1"]))[0]?.path).toBe(
      "rear.geometry.rollSteer",
    );
    const joined = { ...demoCar, name: "Linnet", rear: { ...demoCar.rear, linkage: beam } };
    expect(found(draftOf("x", joined))[0]?.path).toBe("rear.spring.spacing"); // though left empty
  });
});

describe("what is still the workbook's own car", () => {
  it("is every number of a copy, and none that was typed or confirmed", () => {
    const all = placesAsDemo(mine());
    expect(all).toContain("front.bar.positions.2.rate");
    expect(all.length).toBeGreaterThan(100);
    const draft = confirmed(typed(["wheelbase", "2.4"], ["rear.track", "1.5"]), ["front.track"]);
    const left = placesAsDemo(draft);
    expect(all.filter((path) => !left.includes(path)).toSorted()).toEqual([
      "front.track",
      "rear.track",
      "wheelbase",
    ]);
  });

  it("is hardly anything of a first car: what was read or estimated is its own, though it be the same number", () => {
    const axle = { track: 1.45, rideHeight: 0.13, pressure: 200e3, bar: 0.018, tyreRadius: 0.29 };
    const ends = {
      front: { ...axle, kind: "independent" },
      rear: { ...axle, kind: "independent" },
    };
    const whole = { name: "Rook", mass: 1080, frontShare: 0.52, wheelbase: demoCar.wheelbase };
    const first = firstCar({ ...whole, driven: "rear", seat: "left", ...ends } as FirstCar);
    const left = placesAsDemo(draftOf("x", first));
    expect(left).not.toContain("wheelbase");
    expect(left.length).toBeLessThan(10);
    for (const path of left) expect(path).toMatch(/seatT|step$|driveFrontShare/); // turns and steps of hands, no figures of how it drives
  });
});
