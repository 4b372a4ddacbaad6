import { describe, expect, test } from "vitest";
import { phaseNames } from "../../../../lib/balance/phases.js";
import { LEAST_FELT_SHIFT, pointsFelt } from "../../../../lib/day/debrief/feel.js";
import type { Report } from "../../../../lib/day/log/report.js";
import { notesOf } from "../../../../lib/day/practice/driver.js";
import { type Practice, practiceFrom } from "../../../../lib/day/practice/practice.js";
import {
  type HelpLevel,
  helpLevels,
  practiceCorners,
} from "../../../../lib/day/practice/puzzle.js";
import { openRungs, rungOf, rungs } from "../../../../lib/day/practice/rungs.js";
import { type Said, scoreReport } from "../../../../lib/day/practice/score.js";
import { RUNS } from "../../car/any-car.js";

// What a learner earns who goes by what the page shows, and nothing else. The long run tries 2 000
// puzzles of each level and more; here every corner has its share.
const COUNT = Math.max(8, Math.min(500, Math.ceil(RUNS / 40)));
const places = Object.entries(practiceCorners).map(([name, place]) => ({ name, ...place }));

const known = new Map<HelpLevel, readonly Practice[]>();

function puzzlesOf(level: HelpLevel): readonly Practice[] {
  const puzzles = known.get(level) ?? madeOn(level);
  known.set(level, puzzles);
  return puzzles;
}

const madeOn = (level: HelpLevel): Practice[] =>
  places.flatMap((place, i) =>
    Array.from({ length: COUNT }, (_, seed) =>
      practiceFrom(1000 * i + seed, place, undefined, level),
    ),
  );

/**
 * The report of somebody who reads the notes from top to bottom and takes the first of the largest;
 * on the level without notes, who reads off the balance traces in the points of the scale.
 */
function readOff({ level, notes, shifts, corner }: Practice): Said {
  const points = phaseNames.map((phase) =>
    level === 2 ? pointsFelt(shifts[phase]) : notes[phase],
  );
  const largest = Math.max(...points.map(Math.abs));
  if (largest === 0) return "cannot tell";
  const at = points.findIndex((value) => Math.abs(value) === largest);
  const phase = phaseNames[at];
  return {
    corner: corner.name,
    ...(phase && { phase }),
    input: "steady",
    balance: points[at] ?? 0,
  };
}

const reversed = (report: Report): Report => ({ ...report, balance: -(report.balance ?? 0) });

const mean = (values: readonly number[]) =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

describe.each(helpLevels)("on level %i", (level) => {
  const puzzles = puzzlesOf(level);
  const said = puzzles.map(readOff);

  test("whoever reports what is to be seen has 90 or more, every time", () => {
    puzzles.forEach((puzzle, i) => {
      expect(
        scoreReport(puzzle, said[i] ?? "cannot tell").score,
        `puzzle ${puzzle.seed}`,
      ).toBeGreaterThanOrEqual(0.9);
    });
  });

  test("four times nothing noticed, reported as nothing, is as good as saying so", () => {
    puzzles.forEach((puzzle, i) => {
      if (said[i] !== "cannot tell") return;
      const nothing = { corner: "x", phase: "middle", input: "steady", balance: 0 } as const;
      expect(scoreReport(puzzle, nothing).score).toBe(1);
    });
  });

  test("whoever never can tell has less than 50 in the mean, whoever turns all round less than 20", () => {
    expect(mean(puzzles.map((puzzle) => scoreReport(puzzle, "cannot tell").score))).toBeLessThan(
      0.5,
    );
    const turned = puzzles.flatMap((puzzle, i) => {
      const report = said[i];
      return report === undefined || report === "cannot tell"
        ? []
        : [scoreReport(puzzle, reversed(report)).score];
    });
    expect(turned.length).toBeGreaterThan(puzzles.length / 2);
    expect(mean(turned)).toBeLessThan(0.2);
  });

  test("whoever reads the shifts themselves loses nothing by it", () => {
    for (const puzzle of puzzles) {
      const { shifts } = puzzle;
      const most = phaseNames.reduce((a, b) => (Math.abs(shifts[b]) > Math.abs(shifts[a]) ? b : a));
      if (Math.abs(shifts[most]) < 2 * LEAST_FELT_SHIFT) continue;
      const report = {
        corner: "x",
        phase: most,
        input: "steady",
        balance: Math.sign(shifts[most]),
      } as const;
      expect(scoreReport(puzzle, report).score).toBeGreaterThanOrEqual(0.9);
    }
  });
});

test("what is written and is not nothing has the sign of what was there, whoever writes it", () => {
  for (const level of helpLevels)
    for (const { notes, shifts } of puzzlesOf(level))
      for (const phase of phaseNames)
        if (notes[phase] !== 0) expect(Math.sign(notes[phase])).toBe(Math.sign(shifts[phase]));
});

test("with most help what was done is twice what is felt; with less it is now and then too little", () => {
  const size = ({ shifts }: Practice) =>
    Math.max(...phaseNames.map((name) => Math.abs(shifts[name])));
  for (const puzzle of puzzlesOf(1))
    expect(size(puzzle)).toBeGreaterThanOrEqual(2 * LEAST_FELT_SHIFT);
  const faint = puzzlesOf(3).filter((puzzle) => size(puzzle) < LEAST_FELT_SHIFT / 2).length;
  expect(faint).toBeGreaterThan(0);
  expect(faint / (places.length * COUNT)).toBeLessThan(0.3);
});

test("of a hundred and twenty puzzles of one car many hide what no other does", () => {
  const all = helpLevels.flatMap((level) =>
    Array.from({ length: 30 }, (_, seed) => practiceFrom(seed, undefined, undefined, level)),
  );
  const hidden = new Set(all.map((puzzle) => JSON.stringify(puzzle.hidden)));
  expect(hidden.size).toBeGreaterThan(45);
  expect(new Set(all.map(({ driver }) => driver)).size).toBe(5);
  expect(all.filter(({ level }) => level === 4).every((puzzle) => puzzle.hidden.length === 2)).toBe(
    true,
  );
});

test("a driver's notes are the same again, part by part what was there within half a point and the doubt", () => {
  const shifts = { "braking in": 0.5, "turn-in": -0.31, middle: 0, "power on": -0.62 };
  for (let seed = 0; seed < 50; seed++) {
    const notes = notesOf("plain", shifts, seed);
    expect(notesOf("plain", shifts, seed)).toEqual(notes);
    // by hand: a point is 0.2 m/s², the doubt 0.4 of one: 2.5 ± 0.4 → 2 or 3; −1.55 ± 0.4 → −1 or −2
    expect([2, 3]).toContain(notes["braking in"]);
    expect([-1, -2]).toContain(notes["turn-in"]);
    expect(notes.middle).toBe(0);
    expect(notesOf("busy braking", shifts, seed)["braking in"]).toBe(0);
    expect(Math.abs(notesOf("strong", shifts, seed)["power on"])).toBe(3);
  }
});

describe("help fades", () => {
  test("a rung opens when the one before is sure: watched once, or twice 80 and more", () => {
    expect(openRungs([])).toBe(1);
    expect(openRungs([{ rung: 0, total: undefined }])).toBe(2);
    const watched = { rung: 0, total: undefined };
    expect(openRungs([watched, { rung: 1, total: 0.9 }])).toBe(2);
    expect(openRungs([watched, { rung: 1, total: 0.9 }, { rung: 1, total: 0.79 }])).toBe(2);
    expect(openRungs([watched, { rung: 1, total: 0.9 }, { rung: 1, total: 0.8 }])).toBe(3);
    const top = rungs.length - 1;
    expect(openRungs([top, top].map((rung) => ({ rung, total: 1 })))).toBe(rungs.length);
  });

  test("every rung is known again, and a mixture counts as its level", () => {
    expect(rungs.map(rungOf)).toEqual([0, 1, 2, 3, 4, 5, 6]);
    expect(rungOf({ level: 3, worked: 2 })).toBe(5);
  });
});
