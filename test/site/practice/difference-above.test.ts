import { driveKnown, driveOther, practiceFrom } from "@rollbook/lib";
import { describe, expect, it } from "vitest";
import type { AreaMark, LineMark, Mark } from "../../../site/cells/marks.js";
import { differenceAbove } from "../../../site/pages/practice/view/difference-above.js";

const practice = practiceFrom(7);
const known = driveKnown(practice);
const changed = driveOther(practice.changed, practice, known);
const middle = 63; // m

const areas = (marks: readonly Mark[]) =>
  marks.filter((mark): mark is AreaMark => mark.kind === "area");
const pale = (marks: readonly Mark[]) =>
  marks.filter((mark): mark is LineMark => mark.kind === "line" && mark.tone === "muted");
/** rad that a rectangle of a tyre is turned to the left, from its first side. */
const turnOf = ([a = [0, 0], b = [0, 0]]: AreaMark["points"] = []) =>
  Math.atan2(-(b[0] - a[0]), b[1] - a[1]);

describe("the difference of two drives on the car", () => {
  const drawn = (drives: { known: typeof known; changed?: typeof known }, showsSlip = true) =>
    differenceAbove(practice.car, known, showsSlip).draw({ drives, distance: middle });

  it("is none where the car is driven as it is known", () => {
    const marks = drawn({ known });
    const [body] = areas(marks);
    expect(pale(marks).map(({ points }) => points)).toContainEqual(body?.points);
  });

  it("turns the front wheels by ten times what the hands turn them more", () => {
    const nearest = (drive: typeof known) =>
      drive.moments.reduce((best, one) =>
        Math.abs(one.distance - middle) < Math.abs(best.distance - middle) ? one : best,
      ).steeringWheel / practice.car.steeringRatio;
    const [, frontLeft] = areas(drawn({ known, changed }, false));
    const [before, now] = [nearest(known), nearest(changed)];
    expect(turnOf(frontLeft?.points)).toBeCloseTo(3 * before + 10 * (now - before), 1);
    expect(Math.abs(now - before)).toBeGreaterThan(1e-4);
  });

  it("does not show how the car slides where the traces do not", () => {
    const [body] = areas(drawn({ known, changed }, false));
    const xs = body?.points.map(([x]) => x) ?? [];
    expect(Math.min(...xs)).toBeCloseTo(-Math.max(...xs), 12);
  });
});
