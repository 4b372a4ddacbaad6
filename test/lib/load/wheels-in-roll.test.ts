import fc from "fast-check";
import { expect, test } from "vitest";
import { leanInRoll, turnInRoll } from "../../../lib/load/wheels-in-roll.js";
import { between } from "../evenly.js";

const anyGuide = fc.record({
  track: between(1.2, 1.8),
  camberGain: between(-0.8, 0.1),
  toeGain: between(-0.1, 0.1),
  rollSteer: between(-0.2, 0.2),
});

test("the outer wheel of an independent axle toes in with its bump, whatever its roll steer says", () => {
  // by hand: the suspension's part of the roll lifts the outer wheel by that times half the track
  fc.assert(
    fc.property(anyGuide, between(0, 0.1), between(0, 1), (guide, body, share) => {
      const axle = { ...guide, independent: true };
      const bump = (share * body * axle.track) / 2;
      expect(turnInRoll(axle, share * body)).toBeCloseTo(axle.toeGain * bump, 12);
      const lean = leanInRoll(axle, body, share * body);
      expect(lean).toBeCloseTo(-body - axle.camberGain * bump, 12);
      expect(turnInRoll({ ...axle, rollSteer: 0.3 }, 0.05)).toBe(turnInRoll(axle, 0.05));
    }),
  );
});

test("a beam turns by its roll steer and leans by its tyres, whatever its gains in heave", () => {
  fc.assert(
    fc.property(anyGuide, between(0, 0.1), between(0, 1), (guide, body, share) => {
      const beam = { ...guide, independent: false };
      expect(turnInRoll(beam, share * body)).toBeCloseTo(beam.rollSteer * share * body, 12);
      expect(leanInRoll(beam, body, share * body)).toBeCloseTo((share - 1) * body, 12);
      const other = { ...beam, toeGain: 0.5, camberGain: -0.5 };
      expect(leanInRoll(other, body, share * body)).toBe(leanInRoll(beam, body, share * body));
      expect(turnInRoll(other, body)).toBe(turnInRoll(beam, body));
    }),
  );
});
