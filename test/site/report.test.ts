import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Car } from "../../lib/car/car.js";
import { demoCar } from "../../lib/car/demo-car.js";
import { formatCar } from "../../lib/car/file/parse.js";
import type { Change } from "../../lib/change/change.js";
import { formatClass } from "../../lib/day/class/class-file.js";
import { answerTo } from "../../site/commands/report/answer.js";
import { endOf } from "../../site/commands/report-faults.js";
import { howSure } from "../../site/report/how-sure.js";
import { reportText } from "../../site/report/report-text.js";
import {
  type ReportQuestion,
  type SetUpReport,
  setUpReport,
} from "../../site/report/set-up-report.js";
import { numberInWords } from "../../site/say/number-names.js";
import { anyCar, RUNS } from "../lib/car/any-car.js";
import { between } from "../lib/evenly.js";

const folder = mkdtempSync(join(tmpdir(), "report-"));
const asked = { lateralAcceleration: 9, speed: 25 };

const known = new Map<string, SetUpReport>();
/** The report of a car in a corner, worked out once: several tests look at one. */
function reportOf(car: Car, question: ReportQuestion = asked): SetUpReport {
  const key = JSON.stringify([car, question]);
  const found = known.get(key) ?? setUpReport(car, question);
  known.set(key, found);
  return found;
}
const report = reportOf(demoCar);

function run(content: string, ...options: string[]) {
  writeFileSync(join(folder, "car.json"), content);
  try {
    return { ...answerTo(["car.json", ...options], folder), status: 0 };
  } catch (error) {
    const { said, code } = endOf(error);
    return { out: "", err: String(said), status: code };
  }
}

describe("the command", () => {
  test("prints the report of a car file where npm was called, and sentences beside it", () => {
    const started = (...args: string[]) =>
      spawnSync(
        process.execPath,
        ["node_modules/tsx/dist/cli.mjs", "site/commands/report.ts", ...args],
        { encoding: "utf8", env: { ...process.env, INIT_CWD: folder } },
      );
    writeFileSync(join(folder, "demo.json"), formatCar(demoCar));
    const printed = started("demo.json", "--samples", "0");
    expect([printed.status, printed.stderr]).toEqual([0, ""]);
    expect(printed.stdout).toBe(reportText(report, demoCar, "metric"));
    const refused = started("demo.json", "--fast");
    expect([refused.status, refused.stdout]).toEqual([2, ""]);
    expect(refused.stderr).toMatch(/^Unknown option '--fast'/);
  });

  test("samples as many cars as it is asked to, the same each time", () => {
    const { status, out } = run(formatCar(demoCar), "--samples", "1");
    expect(status).toBe(0);
    expect(out).toBe(reportText(report, demoCar, "metric", howSure(demoCar, report, 1)));
  });

  test("prints the same as JSON in SI units", () => {
    const { status, out } = run(formatCar(demoCar), "--json", "--ay", "5", "--samples", "1");
    const printed = JSON.parse(out);
    expect(status).toBe(0);
    expect(printed.asked).toEqual({ lateralAcceleration: 5, speed: 25 });
    expect(printed.mass.total).toBe(1080);
    expect(printed.howSure.samples).toEqual({ balance: 4, changes: 1 });
  });

  test("tells unknown fields and goes on", () => {
    const { status, err } = run(
      formatCar({ ...demoCar, colour: "green" } as typeof demoCar),
      "--samples",
      "0",
    );
    expect(status).toBe(0);
    expect(err).toBe("Note: colour is not a field this workbook knows: it is kept as it is.\n");
  });

  test.each<[string, string, string[], RegExp, number?]>([
    ["a file that is not JSON", "{", [], /^The file is not JSON: /],
    [
      "a value out of range",
      formatCar({ ...demoCar, wheelbase: 40 }),
      [],
      /^wheelbase is 40 m but/,
    ],
    [
      "an impossible corner",
      formatCar(demoCar),
      ["--ay", "99"],
      /^--ay is 99 m\/s² but must be/,
      2,
    ],
    ["a corner that is no number", formatCar(demoCar), ["--ay", "fast"], /^--ay is NaN/, 2],
    [
      "too many samples",
      formatCar(demoCar),
      ["--samples", "501"],
      /^--samples is 501 but must be/,
      2,
    ],
    ["half a sample", formatCar(demoCar), ["--samples", "2.5"], /^--samples is 2.5 but must be/, 2],
    ["an unknown option", formatCar(demoCar), ["--fast"], /^Unknown option '--fast'/, 2],
    ["two files", formatCar(demoCar), ["other.json"], /^Usage: /, 2],
  ])("ends with a sentence for %s", (_, content, options, sentence, code = 1) => {
    const { status, out, err } = run(content, ...options);
    expect([status, out]).toEqual([code, ""]);
    expect(err).toMatch(sentence);
    expect(err).not.toContain("    at ");
  });
});

test("what a terminal would obey is written out, in names and unknown fields, in text and in JSON", () => {
  const name = "Wren\u001b[2J\u202e\nNote: all is well";
  const car = { ...demoCar, name, "\u009b31m\ncolour": 1 } as typeof demoCar;
  for (const options of [[], ["--json"]]) {
    const { out, err } = run(formatCar(car), "--samples", "0", ...options);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
    expect(out + err).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202e]/);
    expect(out).toContain("Wren\\u001b[2J\\u202e\\nNote");
    expect(err).toBe(
      "Note: \\u009b31m\\ncolour is not a field this workbook knows: it is kept as it is.\n",
    );
    if (options.length > 0) expect(JSON.parse(out).car).toBe(name);
  }
});

test("the loads in the turn sum to the weight, in a left turn and in a right one", () => {
  for (const turn of ["leftTurn", "rightTurn"] as const) {
    const { load } = report.inTurn[turn];
    const sum = load && load.front.left + load.front.right + load.rear.left + load.rear.right;
    expect(sum).toBeCloseTo(1080 * 9.80665, 6);
  }
});

describe("a car asked for more than it can do", () => {
  const text = (car: Car, ay: number, speed = 25) => {
    const question = { lateralAcceleration: ay, speed };
    return reportText(reportOf(car, question), car, "metric");
  };

  test("is said to tip over, once where it does so on both sides", () => {
    const { inTurn } = reportOf(demoCar, { lateralAcceleration: 30, speed: 25 });
    expect([inTurn.leftTurn.tipped, inTurn.rightTurn.tipped]).toEqual([true, true]);
    expect(inTurn.leftTurn.load).toBeUndefined();
    const over = text(demoCar, 30);
    expect(over).toMatch(
      /^The car tips over before it turns so hard: at \S+ m\/s²( to the left .*)?\.$/m,
    );
    expect(over).not.toContain("Load transfer");
  });

  test("tips over in one direction and turns in the other when its driver sits far out", () => {
    const driver = { mass: 120, behindFrontAxle: 1.35, leftOfCentre: 0.45, height: 0.48 };
    const car = { ...demoCar, driver };
    const { leftTurn, rightTurn } = reportOf(car).inTurn;
    expect(rightTurn.tipsOverAt).toBeLessThan(leftTurn.tipsOverAt - 0.5);
    const between = (leftTurn.tipsOverAt + rightTurn.tipsOverAt) / 2;
    const { status, out, err } = run(formatCar(car), "--ay", String(between), "--samples", "0");
    expect([status, err]).toEqual([0, ""]);
    const at = rightTurn.tipsOverAt.toFixed(2);
    expect(out).toContain(`In a right turn the car tips over before it turns so hard: at ${at}`);
    expect(out).toContain("\n  left turn");
    expect(out).not.toContain("\n  right turn");
    expect(out).toContain("Load transfer in that left turn, N");
  });

  test("is judged with the downforce of that speed, as its loads are", () => {
    const body = { ...demoCar.body, mass: 420 };
    const air = { drag: 0.5, frontDownforce: 1.2, rearDownforce: 1.6 };
    const car = { ...demoCar, body, air };
    const { leftTurn, rightTurn } = reportOf(car, { lateralAcceleration: 20, speed: 40 }).inTurn;
    for (const turn of [leftTurn, rightTurn]) {
      expect(turn.tipped).toBe(false);
      const inner = turn === leftTurn ? turn.load?.front.left : turn.load?.front.right;
      expect(turn.front?.lifted).toBe(inner === 0);
    }
    expect(leftTurn.front?.lifted).toBe(false);
    expect(leftTurn.tipsOverAt).toBeGreaterThan(20);
    expect(text(car, 20, 40)).not.toContain("tips over");
    expect(text(car, 20, 10)).toContain("tips over"); // hardly any downforce there
  });

  test("is told so when its tyres let go first", () => {
    expect(report.inTurn.leftTurn.harderThanLimit).toBe(false);
    expect(text(demoCar, 9)).not.toContain("harder than this car");
    const { leftTurn } = reportOf(demoCar, { lateralAcceleration: 11, speed: 25 }).inTurn;
    expect(leftTurn.harderThanLimit).toBe(true);
    expect(leftTurn.limit).toBeCloseTo(report.balance.phases.middle.lateralAcceleration, 6);
    expect(text(demoCar, 11)).toMatch(
      /^That is harder than this car can turn, whose own limit is \d+\.\d\d m\/s² to the left and \d+\.\d\d m\/s² to the right: /m,
    );
  });
});

describe("a car that tips over before its tyres let go", () => {
  const car = { ...demoCar, body: { ...demoCar.body, height: 1 } };
  const tall = reportOf(car, { lateralAcceleration: 5, speed: 25 });
  const lines = reportText(tall, car, "metric").split("\n");

  test("is said to tip over, without a margin", () => {
    expect(tall.balance.tips).toContain("turn-in");
    expect(lines.find((line) => line.startsWith("  turn-in"))).toMatch(/ – +tips over/);
  });

  test("has dashes for shifts of a balance that is not there, and one sentence for them", () => {
    const step = lines.find((line) => line.startsWith("  front camber −1.50° → −1.75°  "));
    expect(step).toMatch(/ {2}– {2}/);
    expect(lines.filter((line) => line.startsWith("–: before or after the change"))).toHaveLength(
      1,
    );
    expect(tall.changes[0]?.tips).toContain("turn-in");
  });
});

describe("the table of changes", () => {
  const lines = reportText(report, demoCar, "metric").replaceAll("\u00a0", " ").split("\n");
  const row = (label: string) => lines.find((line) => line.startsWith(`  ${label}  `)) ?? "";

  test("tells shifts to hundredths, and the grip that a change gives or takes", () => {
    expect(row("front bar position 3 → 4")).toMatch(/(\s+[+−]\d\.\d\d){5}\s+\*$/);
    expect(lines.find((line) => line.includes("braking in   turn-in"))).toMatch(/power on +limit$/);
  });

  test("marks what is likely to be felt, and says what the mark means", () => {
    const marked = lines.filter((line) => line.endsWith("*")).length;
    expect(marked).toBeGreaterThan(5);
    expect(marked).toBeLessThan(report.changes.length);
    expect(row("front camber −1.50° → −1.75°")).not.toContain("*");
    expect(lines.join("\n")).toContain(
      "*: a margin shifts by 0.10 m/s² or more, likely to be felt.",
    );
  });

  test("has no dashes and no word of tipping for a car on its wheels", () => {
    expect(lines.some((line) => line.includes("tips over"))).toBe(false);
    expect(report.balance.tips).toEqual([]);
  });

  test("tells what toe and pressure do below the limit", () => {
    const also = (label: string) => lines.find((line) => line.startsWith(`  ${label}:`));
    expect(also("front toe-in per wheel 0.00° → 0.05°")).toContain("understeer gradient −0.02");
    expect(also("front tyre pressure 200 kPa → 205 kPa")).toContain("yaw response −0.00");
  });
});

describe("what the figures at the limit take for granted", () => {
  const text = (car: Car) => reportText(reportOf(car), car, "metric");
  const demo = reportText(report, demoCar, "metric").replaceAll("\u00a0", " ");
  const { differential: _, ...unknown } = demoCar.rear;

  test("is an open differential where the file names none, with what others would move", () => {
    expect(demo).not.toContain("differential");
    expect(text({ ...demoCar, rear: unknown })).toMatch(
      /^The file does not say what kind of differential the rear axle has: figures take it as open\. A limited-slip one \(locking 40.% under power, 20.% on the overrun\) would move the margin by 0\.\d\d.m\/s² towards oversteer .*; a locked one would .* with power on\.$/m,
    );
  });

  test("is a yaw acceleration of zero, with what it would take", () => {
    const taken = -report.balance.phases["turn-in"].yawAccelerationMargin;
    expect(demo).toContain(`and ${taken.toFixed(2)} m/s² at turn-in.`);
  });

  test("is that nobody tips it over, where it comes within a tenth of that", () => {
    const tall = { ...demoCar, body: { ...demoCar.body, height: 0.72 } };
    expect(text(tall)).toMatch(/^Beware: at turn-in this car can turn to within a tenth of where/m);
    expect(demo).not.toContain("Beware");
  });

  test("is braking that the car can do: on little grip it says what it can", () => {
    const axle = (end: "front" | "rear") => ({
      ...demoCar[end],
      tyre: { ...demoCar[end].tyre, grip: 0.5 },
    });
    const car = { ...demoCar, front: axle("front"), rear: axle("rear"), brakeFrontShare: 0.1 };
    const { eased, phases } = reportOf(car).balance;
    expect(eased.map(({ phase }) => phase)).toContain("braking in");
    expect(phases["braking in"].given).toBe(false);
    const able = -(eased.find(({ phase }) => phase === "braking in")?.given ?? 0);
    expect(able).toBeLessThan(4);
    expect(text(car).replaceAll("\u00a0", " ")).toContain(
      `While braking in the car cannot brake with the usual 4.0 m/s²: its figures there are for ${able.toFixed(1)} m/s², nearly the most that it can.`,
    );
  });

  test("is said of pressure, lean and dampers beside their changes", () => {
    expect(demo).toContain(
      "Nobody has put in at which pressure the front and rear tyres grip best.",
    );
    expect(demo).toContain("Dampers decide how the car arrives in a turn");
    expect(demo).not.toContain("what lean costs");
    const known = { ...demoCar.front.tyre, bestPressure: 210e3 };
    const road = { ...demoCar.rear.tyre, name: "published road" };
    const other = text({
      ...demoCar,
      front: { ...demoCar.front, tyre: known },
      rear: { ...demoCar.rear, tyre: road },
    });
    expect(other).toContain("Nobody has put in at which pressure the rear tyres grip best.");
    expect(other).toContain("The data of the rear tyres say nothing of what lean costs");
  });
});

describe("travel", () => {
  test("stands beside what there is, wheel by wheel", () => {
    const text = reportText(report, demoCar, "metric");
    expect(text).toMatch(/^ {2}free upwards +\+60 +\+60 +\+65 +\+65$/m);
    const { right } = report.balance.phases["braking in"].wheels.front;
    const shown = Math.round(right.travel * 1000);
    expect(text).toMatch(new RegExp(`^ {2}braking in +−\\d+ +\\+${shown} +−\\d+ +\\+\\d+$`, "m"));
  });

  test("that a change uses up is told with it, and where the file gives none there is a dash", () => {
    const change = reportText(report, demoCar, "metric")
      .split("\n")
      .find((line) => line.includes("60\u00a0N/mm → 55\u00a0N/mm: "));
    expect(change).toBeDefined();
    const softer = report.changes.find(
      ({ label }) => label.startsWith("front spring rate") && label.includes("→ 55"),
    );
    const back = softer?.putBack?.onStops ?? [];
    expect(change?.includes("comes to be on its bump stop")).toBe(back.length > 0);
    const { bumpTravel: _, ...geometry } = demoCar.front.geometry;
    const car = { ...demoCar, front: { ...demoCar.front, geometry } };
    expect(reportText(reportOf(car), car, "metric")).toMatch(
      /^ {2}free upwards +– +– +\+65 +\+65$/m,
    );
  });
});

describe("a report that says how sure it is", () => {
  const changes = report.changes.filter(({ change }) =>
    /^(barPosition|springRate|damper|tyrePressure)/.test(change.lever),
  );
  const few = { ...report, changes }; // each is worked out on every car that is sampled
  const sure = howSure(demoCar, few, 10);
  const text = reportText(few, demoCar, "metric", sure).replaceAll("\u00a0", " ");
  const lines = text.split("\n");
  const numbers = (line: string) => [...line.matchAll(/[+−]?\d+\.?\d*/g)].map(([number]) => number);
  const decimals = (number: string) => number.split(".")[1]?.length ?? 0;

  test("gives margin and hardest turn with bands about them, and a verdict in words", () => {
    for (const name of ["braking in", "turn-in", "middle", "power on"] as const) {
      const line = lines.find((one) => one.startsWith(`  ${name} `)) ?? "";
      expect(line).toMatch(/(sure|likely|cannot say)$/);
      const [turn, low, high, , margin, least, most] = numbers(line.replaceAll("−", "-")).map(
        Number,
      );
      const { lateralAcceleration, understeerMargin } = sure.balance[name];
      expect(low).toBeCloseTo(lateralAcceleration.band.low.value, 0);
      expect(high).toBeCloseTo(lateralAcceleration.band.high.value, 0);
      expect(turn).toBeGreaterThan(low ?? 0);
      expect(turn).toBeLessThan(high ?? 0);
      expect(line).toContain(understeerMargin.value < 0 ? "rear" : "front");
      expect([margin, least, most].every(Number.isFinite)).toBe(true);
    }
  });

  test("has no figure with more digits than its band, here about 2 m/s² wide: tenths", () => {
    const middle = lines.find((line) => line.startsWith("  middle ")) ?? "";
    const { low, high } = sure.balance.middle.understeerMargin.band;
    expect(high.value - low.value).toBeGreaterThan(0.71); // half of it has one digit, a tenth, from 0.355 on
    expect(new Set(numbers(middle).map(decimals))).toEqual(new Set([1]));
  });

  test("says of a change how sure its way is, and nothing of those that are not ranked", () => {
    const bar = lines.find((line) => line.startsWith("  front bar position 3 → 4  "));
    expect(bar).toMatch(/ {3}(sure|likely|cannot say)(; .*)?$/);
    const damper = lines.find((line) => line.startsWith("  front damper rate in bump"));
    expect(damper).toMatch(/\d$/);
    few.changes.forEach(({ change }, i) => {
      expect(sure.changes[i] === undefined).toBe(/^damper|^tyrePressure/.test(change.lever));
    });
  });

  test("puts the strongest changes in groups, one way and the other, each change once", () => {
    const from = lines.findIndex((line) => line.startsWith("The strongest in the middle"));
    const [under, over] = ["  towards understeer", "  towards oversteer"].map((line) =>
      lines.indexOf(line, from),
    );
    const listed = (start = 0) =>
      lines.slice(start + 1).findIndex((line) => !/^ {4}\d/.test(line)) + start + 1;
    const first = lines.slice((under ?? 0) + 1, listed(under)).join("\n");
    expect(first).toContain("front bar position 3 → 4");
    expect(first).not.toContain("front bar position 3 → 2");
    expect(lines.slice((over ?? 0) + 1, listed(over)).join("\n")).toContain("3 → 2");
    const { groups } = sure;
    expect(new Set(groups.understeer.flat()).size).toBe(groups.understeer.flat().length);
  });

  test("names what widens the band in words", () => {
    const widest = [{ path: "rear.tyre.grip", share: 0.52 }];
    const middle = { ...sure.balance.middle, widest };
    const named = { ...sure, balance: { ...sure.balance, middle } };
    expect(reportText(few, demoCar, "metric", named)).toMatch(
      /Whose doubt widens .*\n(.*\n)* {2}middle: about rear tyre grip \(50 %\)\n/,
    );
    expect(numberInWords("rear.tyre.grip")).toBe("rear tyre grip");
    expect(numberInWords("body.height")).toBe("height of the centre of gravity");
    expect(numberInWords("front.geometry.rollCentreHeight")).toBe("front roll centre height");
    expect(numberInWords("gripOfTheDay")).toBe("grip of the day");
  });
});

test("pressures outside the tyre's data are noted, in the text and in the figures", () => {
  const tyre = { name: "published road", pressure: { left: 270e3, right: 270e3 } };
  const { limits: _, ...free } = demoCar;
  const car = { ...free, front: { ...demoCar.front, tyre } };
  const off = reportOf(car);
  expect(off.outsideTyreData.map(({ end, what }) => [end, what])).toEqual([["front", "pressure"]]);
  expect(reportText(off, car, "us")).toContain("reach from 27.0\u00a0psi to 37.0\u00a0psi");
  expect(report.outsideTyreData).toEqual([]);
  expect(reportText(report, demoCar, "metric")).not.toContain("Outside the data");
});

test("the centre of gravity is where it is with the seats turned", () => {
  const axle = (end: "front" | "rear") => ({
    ...demoCar[end],
    spring: { ...demoCar[end].spring, seatTurns: { left: -10, right: -10 } },
  });
  const lower = reportOf({ ...demoCar, front: axle("front"), rear: axle("rear") }, asked);
  const sunk = (end: "front" | "rear") =>
    report.figures.rideHeight[end] - lower.figures.rideHeight[end];
  const fell = report.mass.centreOfGravity.height - lower.mass.centreOfGravity.height;
  expect(fell).toBeGreaterThan(0.8 * Math.min(sunk("front"), sunk("rear"))); // wheels stay down
  expect(fell).toBeLessThan(Math.max(sunk("front"), sunk("rear")));
});

test("the text comes in the units of the reader", () => {
  const us = reportText(report, demoCar, "us");
  expect(us).toContain("2381 lb");
  expect(us).toContain("front spring rate 343\u00a0lbf/in → 371\u00a0lbf/in");
  expect(us).not.toMatch(/ (kPa|N\/mm|mm|kg)\b/);
});

test("why a change cannot be made comes in the units of the reader", () => {
  const [first] = report.changes;
  const number = {
    ...{ field: "spring rate", value: 95e3, least: 40e3, most: 90e3, unit: "N/m" },
    quantity: "stiffness" as const,
  };
  const refusal = { code: "out-of-range" as const, message: "in SI", number };
  const changes = [{ change: first?.change as Change, label: "stiffer", refused: "", refusal }];
  const text = (units: "us" | "metric") => reportText({ ...report, changes }, demoCar, units);
  // 1 lbf/in = 175.1268 N/m (NIST SP 811, B.9): 95 000 / 175.1268 = 542.464
  expect(text("us")).toMatch(/spring rate is 542\.464 lbf\/in but must be from 228\.406 to/);
  expect(text("metric")).toMatch(/spring rate is 95 N\/mm but must be from 40 to 90 N\/mm\./);
});

test("no figure of the report is NaN", () => {
  expect(JSON.stringify(report, (_, value) => (Number.isNaN(value) ? "NaN" : value))).not.toContain(
    '"NaN"',
  );
});

test("any car in any corner gets a report in whole words and numbers, or is refused in a sentence", () => {
  const corner = fc.record({ lateralAcceleration: between(0, 30), speed: between(1, 100) });
  fc.assert(
    fc.property(anyCar, corner, (car, question) => {
      const told = reportUnlessRefused(car, question);
      expect(told).not.toMatch(/NaN|Infinity|undefined|null/);
    }),
    { numRuns: Math.ceil(RUNS / 25) },
  );
});

function reportUnlessRefused(car: Car, question: ReportQuestion): string {
  try {
    return reportText(setUpReport(car, question), car, "metric");
  } catch (error) {
    if (error instanceof RangeError) return error.message;
    throw error;
  }
}

test("every key of the report is documented, and every documented key is there", () => {
  const page = readFileSync("docs/report.md", "utf8");
  const table = page.slice(page.indexOf("## Keys"));
  const documented = [...table.matchAll(/^\| (`[^|]+)\|/gm)].flatMap(([, cell = ""]) =>
    [...cell.matchAll(/`([^`]+)`/g)].map(([, key = ""]) => key),
  );
  const first = Object.keys(report).concat("notes", "howSure");
  const inside = ["asked", "mass", "atRest", "inTurn", "balance"] as const;
  const keys = first.flatMap((key) => {
    const group = inside.find((name) => name === key);
    return group === undefined ? [key] : Object.keys(report[group]).map((name) => `${key}.${name}`);
  });
  const turn = Object.keys(report.inTurn.leftTurn).map((key) => `inTurn.*.${key}`);
  const rows = Object.keys(report.changes[0] ?? {}).flatMap((key) =>
    ["change", "label"].includes(key) ? [] : [`changes[].${key}`],
  );
  expect(documented.sort()).toEqual([...keys, ...turn, ...rows].sort());
});

describe("cars against a class", () => {
  const rules = [
    { kind: "rideHeight", name: "4.1", least: 0.12 },
    { kind: "springRate", end: "front", greatest: 62e3 },
    { kind: "fixed", name: "4.3", levers: ["toe"] },
  ] as const;
  const file = (name: string, content: string) => writeFileSync(join(folder, name), content);
  const heavy: Car = {
    ...demoCar,
    name: "Rook",
    front: { ...demoCar.front, rideHeight: 0.115, spring: { ...demoCar.front.spring, rate: 64e3 } },
  };
  file("club.json", formatClass({ name: "Club", rules }));
  file("pipit.json", formatCar(demoCar));
  file("rook.json", formatCar(heavy));
  const asked = (...args: string[]) => answerTo(["--class", "club.json", ...args], folder);

  test("are a row each, held or broken and by how much, and 1 where one is broken", () => {
    const well = asked("pipit.json");
    expect(well.code).toBeUndefined();
    const { out, code } = asked("pipit.json", "rook.json");
    expect(code).toBe(1);
    const row = (name: string) =>
      out.split("\n").find((line) => line.trim().startsWith(name)) ?? "";
    expect(row("Pipit")).toMatch(/held, 10\.0.mm to spare \(front left\).*held, 2\.0.N\/mm/); // 130 − 120 mm, 62 − 60 N/mm
    expect(row("Rook")).toMatch(
      /BROKEN by 5\.0.mm \(front left\).*BROKEN by 2\.0.N\/mm \(front\).*2 BROKEN/,
    );
    expect(out).toContain("[1] rule 4.1, ride height at least 120\u00a0mm".replace("\u00a0", " "));
    expect(out).toContain("rule 4.3: toe-in per wheel may not be moved");
  });

  test("name a car that cannot be read, tell the others all the same, and are facts as JSON", () => {
    file("broken.json", "{}");
    const { out, code } = asked("broken.json", "pipit.json");
    expect(code).toBe(1);
    expect(out).toMatch(/Pipit .*held/);
    expect(out).toMatch(/^broken\.json: name is missing/m);
    const { cars } = JSON.parse(asked("rook.json", "--json").out);
    expect(cars[0].facts).toHaveLength(5); // four wheels and the front springs
    expect(cars[0].facts[4]).toMatchObject({ value: 64e3, limit: 62e3, margin: -2e3, held: false });
  });

  test("are not looked at where the class file is none", () => {
    expect(() => answerTo(["--class", "pipit.json", "rook.json"], folder)).toThrow(/whose kind is/);
  });
});
