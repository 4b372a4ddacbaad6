import { demoCar } from "@rollbook/lib";
import { expect, test } from "vitest";
import { carFromSide, fromSide } from "../../../site/cells/living/side.js";
import type { ArrowMark, LineMark, Mark } from "../../../site/cells/marks.js";

const standing = { height: { front: 0.13, rear: 0.14 }, load: { front: 6000, rear: 4000 } };
const seen = (rise: { front: number; rear: number }) =>
  carFromSide(fromSide(demoCar, { ...standing, rise, enlarged: 3 }));
const lines = (marks: readonly Mark[], part: string) =>
  marks.filter((mark): mark is LineMark & Mark => mark.kind === "line" && mark.part === part);

test("a car from the side dives about its axles, as many times enlarged as asked, before a pale outline", () => {
  const [before, now] = lines(seen({ front: -0.02, rear: 0.01 }), "body");
  const fall = (i: number) => (now?.points[i]?.[1] ?? 0) - (before?.points[i]?.[1] ?? 0);
  const x = (i: number) => before?.points[i]?.[0] ?? 0;
  // by hand: −0.06 m at the front axle, 0.09 m more over a wheelbase further back
  for (const i of [0, 4, 8, 10])
    expect(fall(i)).toBeCloseTo(-0.06 + (0.09 * x(i)) / demoCar.wheelbase, 9);
  expect(before?.tone).toBe("muted");
});

test("its springs stand on the hubs and end as much higher as the body", () => {
  const ends = (rise: number) =>
    lines(seen({ front: rise, rear: 0 }), "springs").map(({ points }) => [
      points[0]?.[1] ?? 0,
      points.at(-1)?.[1] ?? 0,
    ]);
  const [[hub = 0, seat = 0] = [], [, rear = 0] = []] = ends(0);
  const [[sameHub = 0, lower = 0] = [], [, sameRear = 0] = []] = ends(-0.02);
  expect(hub).toBe(demoCar.front.unsprungHeight);
  expect(sameHub).toBe(hub);
  expect(seat - lower).toBeCloseTo(0.06, 9);
  expect(sameRear).toBeCloseTo(rear, 9);
});

test("has arrows as long as the loads of its axles", () => {
  const [front, rear] = seen({ front: 0, rear: 0 }).filter(
    (mark): mark is ArrowMark & Mark => mark.kind === "arrow",
  );
  const length = (mark?: ArrowMark) => (mark ? mark.to[1] - mark.from[1] : Number.NaN);
  expect(length(front) / length(rear)).toBeCloseTo(1.5, 9);
});
