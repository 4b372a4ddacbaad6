import { describe, expect, test } from "vitest";
import { tyreStiffnessOf, wheelRateOf } from "../../../lib/car/axle.js";
import type { Car } from "../../../lib/car/car.js";
import { demoCar } from "../../../lib/car/demo-car.js";
import { axleWeightsOf, sprungMassOf, totalMassOf } from "../../../lib/car/masses.js";
import type { FrontViewLinkage } from "../../../lib/linkage/front-view.js";
import { onFourScales } from "../../../lib/measure/four-scales.js";
import { exactly, NINE_IN_TEN } from "../../../lib/measure/measured.js";
import { motionRatioFromSteps } from "../../../lib/measure/motion-ratio.js";
import { heightByRaisedAxle, type RaisedAxle } from "../../../lib/measure/raised-axle.js";
import { rideRateByBallast } from "../../../lib/measure/ride-rate.js";
import { rollSplitBySill, rollSplitOf } from "../../../lib/measure/sill-split.js";
import { apparentRollStiffnessOf, rollStiffnessBySill } from "../../../lib/measure/sill-weight.js";
import { linkageByTape } from "../../../lib/measure/taped-linkage.js";
import { tyrePrint, tyreRateByLoad } from "../../../lib/measure/tyre-print.js";
import { normalFrom, randomFrom } from "../../../lib/random.js";
import { restOf } from "../../../lib/statics/rest.js";
import { GRAVITY } from "../../../lib/units.js";

const give = (spread: number) => (value: number) => ({ value, spread });

describe("four scales", () => {
  const one = give(1);
  const readings = {
    front: { left: one(290), right: one(271.375) },
    rear: { left: one(262), right: one(256.625) },
  };

  test("give back the workbook's own car, and mass, length, side and cross weight by hand", () => {
    const told = onFourScales(demoCar, readings);
    expect(told.mass.value).toBeCloseTo(1080, 10);
    expect(told.mass.spread).toBeCloseTo(2, 10); // √4·1 kg
    expect(told.crossShare.value).toBeCloseTo((271.375 + 262) / 1080, 12);
    expect(told.behindFrontAxle.value).toBeCloseTo((2.4 * 518.625) / 1080, 12);
    expect(told.bodyMass.value).toBeCloseTo(demoCar.body.mass, 9);
    expect(told.bodyBehindFrontAxle.value).toBeCloseTo(demoCar.body.behindFrontAxle, 9);
  });

  test("doubt of the cross weight is that of the four scales: ½·√4 of a kilogram in its mass", () => {
    const { crossShare } = onFourScales(demoCar, readings);
    const cross = crossShare.value; // ∂c/∂Fi = (1 − c)/m on the diagonal, −c/m off it
    const byHand = Math.sqrt(2 * (1 - cross) ** 2 + 2 * cross ** 2) / 1080;
    expect(crossShare.spread).toBeCloseTo(byHand, 7);
  });

  test("the body's doubt has the driver's in it, by the driver's mass and place", () => {
    const { bodyMass, bodyLeftOfCentre } = onFourScales(demoCar, readings);
    expect(bodyMass.from.map(({ name }) => name)).toContain("driver.mass");
    expect(bodyLeftOfCentre.from.map(({ name }) => name)).toContain("driver.leftOfCentre");
    expect(bodyMass.spread).toBeGreaterThan(2);
  });
});

/** What the scales under the axle that stays down show: rigid bodies on springs and tyres, by bisection. */
function raisedByHand(car: Car, rise: number, springs: boolean, tyres: boolean): number {
  const { wheelbase: L, front, rear } = car;
  const hub = 0.29;
  const sprung = sprungMassOf(car);
  const weights = axleWeightsOf(car);
  const kt = (end: "front" | "rear") => 2 * tyreStiffnessOf(car[end], weights[end] / 2);
  const kw = (end: "front" | "rear") => 2 * wheelRateOf(car[end]);
  const forwardMoment = (moved: number) => {
    const onTyres = tyres ? moved / kt("front") + moved / kt("rear") : 0;
    const theta = Math.asin((rise + onTyres) / L);
    const [up, down] = springs ? [moved / kw("front"), moved / kw("rear")] : [0, 0];
    const pitch = (up + down) / L;
    const aft = L - sprung.behindFrontAxle - pitch * (sprung.height - hub); // of the rear axle, forward
    const high = sprung.height - hub + up - ((up + down) * sprung.behindFrontAxle) / L;
    const arm = (x: number, z: number) => x * Math.cos(theta) - z * Math.sin(theta);
    const moment =
      sprung.mass * arm(aft, high) +
      front.unsprungMass * arm(L, front.unsprungHeight - hub) +
      rear.unsprungMass * arm(0, rear.unsprungHeight - hub);
    return (moment * GRAVITY) / (L * Math.cos(theta));
  };
  let [low, high] = [0, 3000];
  for (let i = 0; i < 80; i++) {
    const moved = (low + high) / 2;
    if (weights.front - forwardMoment(moved) > moved) low = moved;
    else high = moved;
  }
  return (weights.rear + low) / GRAVITY;
}

describe("one axle raised", () => {
  const height = totalMassOf(demoCar).height;
  const read = (lifted: number, more: Partial<RaisedAxle> = {}): RaisedAxle => ({
    raised: "front",
    level: give(0.5)(axleWeightsOf(demoCar).rear / GRAVITY),
    lifted: give(0.5)(lifted),
    rise: give(0.002)(0.5),
    at: "hubs",
    hubs: { front: give(0.003)(0.29), rear: give(0.003)(0.29) },
    locked: true,
    ...more,
  });

  test("held springs and stiff tyres give the height back exactly", () => {
    const told = heightByRaisedAxle(demoCar, read(raisedByHand(demoCar, 0.5, false, false)));
    expect(told.height.value).toBeCloseTo(height, 6);
    expect(told.bodyHeight.value).toBeCloseTo(demoCar.body.height, 6);
    expect([told.springs, told.tyres]).toEqual([0, 0]);
  });

  test("springs that are free and tyres that give are taken off, to half a centimetre and told", () => {
    const lifted = raisedByHand(demoCar, 0.5, true, true);
    const told = heightByRaisedAxle(demoCar, read(lifted, { locked: false, at: "tyres" }));
    expect(Math.abs(told.height.value - height)).toBeLessThan(0.003);
    const naive = heightByRaisedAxle(demoCar, read(lifted));
    const wrong = naive.height.value - height;
    expect(told.springs + told.tyres).toBeGreaterThan(0.7 * wrong);
    expect(told.springs + told.tyres).toBeLessThan(1.3 * wrong);
    expect(told.height.from.map(({ name }) => name)).toContain("given");
  });

  test("a kilogram of the scales is a fifth of the height of hubs and more, told as its largest doubt", () => {
    const told = heightByRaisedAxle(demoCar, read(raisedByHand(demoCar, 0.5, false, false)));
    // ∂h/∂ΔF = L/(W·tan θ), both readings 0.5 kg: 0.7071·2.4/(1080·0.2130)
    const byScales = (Math.SQRT1_2 * 2.4) / (1080 * Math.tan(Math.asin(0.5 / 2.4)));
    const share = told.height.from
      .filter(({ name }) => name === "level" || name === "lifted")
      .reduce((sum, one) => sum + one.share, 0);
    expect(Math.sqrt(share) * told.height.spread).toBeCloseTo(byScales, 4);
  });

  test("refuses a rise of nothing, and a load that did not go back", () => {
    const lifted = raisedByHand(demoCar, 0.5, false, false);
    expect(() => heightByRaisedAxle(demoCar, read(lifted, { rise: exactly(0) }))).toThrow(/rise/);
    expect(() => heightByRaisedAxle(demoCar, read(400))).toThrow(/load with one axle raised/);
  });
});

describe("ballast over an axle", () => {
  const ride = 1 / (1 / wheelRateOf(demoCar.front) + 1 / tyreStiffnessOf(demoCar.front, 2752.6));
  const steps = [40, 80, 120].map((added) => ({
    added,
    fall: give(0.5e-3)((added * GRAVITY) / (2 * ride)),
  }));

  test("gives ride rate, wheel rate and motion ratio back, and no misfit", () => {
    const told = rideRateByBallast(demoCar, "front", steps);
    expect(told.rate.value).toBeCloseTo(ride, 4);
    expect(told.wheelRate?.value ?? 0).toBeCloseTo(25_350, -1);
    expect(told.motionRatio?.value ?? 0).toBeCloseTo(0.65, 3);
    expect(Math.abs(told.misfit ?? 1)).toBeLessThan(0.01);
  });

  test("says how far a motion ratio that is wrong in the file is off", () => {
    const spring = { ...demoCar.front.spring, motionRatio: 0.8 };
    const told = rideRateByBallast(
      { ...demoCar, front: { ...demoCar.front, spring } },
      "front",
      steps,
    );
    expect(told.misfit ?? 0).toBeGreaterThan(3);
    expect(told.motionRatio?.value ?? 0).toBeCloseTo(0.65, 2);
  });

  test("the band of the rate holds the truth nine times in ten (200 cases)", () => {
    const random = randomFrom(3);
    let holds = 0;
    for (let i = 0; i < 200; i++) {
      const first = 0.5e-3 * normalFrom(random); // the height that all falls are counted from
      const noisy = steps.map(({ added, fall }) => ({
        added,
        fall: give(0.5e-3)(fall.value + first + 0.5e-3 * normalFrom(random)),
      }));
      const { rate } = rideRateByBallast(demoCar, "front", noisy);
      if (Math.abs(rate.value - ride) < NINE_IN_TEN * rate.spread) holds++;
    }
    expect(holds / 200).toBeGreaterThan(0.83);
    expect(holds / 200).toBeLessThan(0.97);
  });

  test("refuses a body that did not come down", () => {
    const still = steps.map(({ added }) => ({ added, fall: give(1e-3)(0) }));
    expect(() => rideRateByBallast(demoCar, "front", still)).toThrow(/did not come down/);
  });
});

describe("weight on a sill", () => {
  test("springs, bars and tyres: two in series side by side, as a stiff body leans on them", () => {
    const lying = { ...demoCar, body: { ...demoCar.body, height: 0.05 } }; // next to nothing to lean
    const seriesOf = (end: "front" | "rear") => {
      const { track, bar } = demoCar[end];
      const rate = bar?.positions[bar.position - 1]?.rate ?? 0;
      const springs = 0.5 * wheelRateOf(demoCar[end]) * track ** 2 + rate * (0.6 * track) ** 2;
      const tyres =
        0.5 * tyreStiffnessOf(demoCar[end], restOf(demoCar).load[end].left) * track ** 2;
      return 1 / (1 / springs + 1 / tyres);
    };
    const series = seriesOf("front") + seriesOf("rear");
    const arm = exactly(0.7);
    const apparent = apparentRollStiffnessOf(demoCar);
    const lean = (added: number) => (added * GRAVITY * 0.7) / apparent;
    const steps = [30, 60].map((added) => ({ added, lean: give(1e-4)(lean(added)) }));
    const told = rollStiffnessBySill(demoCar, arm, steps);
    expect(told.apparent.value).toBeCloseTo(apparent, 3);
    expect(Math.abs(told.stiffness.value / series - 1)).toBeLessThan(0.02);
    expect(apparentRollStiffnessOf(lying)).toBeGreaterThan(apparent);
    const [front, rear] = (["front", "rear"] as const).map((end) => seriesOf(end));
    const share = (front ?? 0) / ((front ?? 0) + (rear ?? 0));
    expect(rollSplitOf(demoCar)).toBeCloseTo(share, 2); // and half a point for what leans
    // Body 920 kg, about 0.45 m above its roll axis: some 4 kN·m/rad
    expect(told.leaning).toBeGreaterThan(3000);
    expect(told.leaning).toBeLessThan(5200);
  });
});

describe("four scales beside a weight on a sill", () => {
  const at = (fl: number, fr: number, rl: number, rr: number, spread = 0.2) => ({
    front: { left: give(spread)(fl), right: give(spread)(fr) },
    rear: { left: give(spread)(rl), right: give(spread)(rr) },
  });

  test("give the front's share by what moves across, times half the track", () => {
    // 24 kg across in front at 1.44 m, 12 kg at the rear at 1.45 m; 15 kg straight down at each wheel
    const told = rollSplitBySill(demoCar, at(290, 270, 262, 258), at(281, 309, 265, 285));
    expect(told.value).toBeCloseTo((24 * 1.44) / (24 * 1.44 + 12 * 1.45), 12);
    const [front, rear] = [24 * 1.44, 12 * 1.45];
    const moved = 0.2 * 2; // eight scales: each end's four add to √4 of one
    const byHand = (moved * Math.hypot(rear * 0.72, front * 0.725)) / (front + rear) ** 2;
    expect(told.spread / byHand).toBeCloseTo(1, 4); // ∂s/∂f = r/(f + r)², ∂s/∂r = −f/(f + r)²
  });

  test("are refused where nothing moved across", () => {
    const same = at(290, 270, 262, 258);
    expect(() => rollSplitBySill(demoCar, same, at(300, 280, 272, 268))).toThrow(/moved across/);
  });
});

describe("hub and spring", () => {
  const on = (rises: readonly number[], curve: (rise: number) => number) =>
    rises.map((rise) => ({ rise, shortening: curve(rise) }));
  const rises = [-0.04, -0.02, 0, 0.02, 0.04, 0.06];

  test("a straight motion ratio is one, and is called straight", () => {
    const told = motionRatioFromSteps(
      on(rises, (z) => 0.65 * z),
      0.5e-3,
    );
    expect(told.ratio.value).toBeCloseTo(0.65, 10);
    expect(told.changes).toBe(false);
    // σ/√Σ(z − z̄)²: 0.5 mm over √(7·10⁻³ m²)
    expect(told.ratio.spread).toBeCloseTo(0.5e-3 / Math.sqrt(0.007), 6);
  });

  test("one that rises is called so, and told where the wheel rests", () => {
    const told = motionRatioFromSteps(
      on(rises, (z) => 0.65 * z + 1.5 * z ** 2),
      0.3e-3,
    );
    expect(told.changes).toBe(true);
    expect(told.ratio.value).toBeCloseTo(0.65, 8);
    expect(told.perTravel?.value ?? 0).toBeCloseTo(3, 8);
  });

  test("two steps are enough for a ratio, one is not", () => {
    expect(
      motionRatioFromSteps(
        on([0, 0.05], (z) => 0.7 * z),
        1e-3,
      ).ratio.value,
    ).toBeCloseTo(0.7, 10);
    expect(() =>
      motionRatioFromSteps(
        on([0], (z) => z),
        1e-3,
      ),
    ).toThrow(/two steps/);
  });
});

describe("joints by tape", () => {
  // Parallel level arms: instant centre without end, roll centre on the ground
  const level: FrontViewLinkage = {
    kind: "double wishbone",
    wheelCentre: { y: 0.72, z: 0.29 },
    contactPatch: { y: 0.72, z: 0 },
    lowerInner: { y: 0.35, z: 0.2 },
    lowerOuter: { y: 0.68, z: 0.2 },
    upperInner: { y: 0.35, z: 0.42 },
    upperOuter: { y: 0.68, z: 0.42 },
  };

  test("arms that lie level have their roll centre on the ground, give or take what the tape is off", () => {
    const tape = 2e-3;
    const { rollCentreHeight, camberGain, lost } = linkageByTape(level, tape);
    expect(rollCentreHeight.value).toBeCloseTo(0, 9);
    expect(camberGain.value).toBeCloseTo(0, 3);
    expect(lost).toBe(0);
    /*
     * Slopes of both arms are off by √2·tape/arm. The patch, at height 0, goes out by
     * sl·0.2 + (su − sl)·(…) as the wheel rises: slope at height z is sl + (su − sl)(z − zl)/(zu − zl),
     * times heights: dy/dz = [sl·… ] by hand: y' of lower joint = sl, of upper = su where s = dz/dy.
     * With y'(z) linear in z, at the ground y' = sl + (sl − su)·0.2/0.22, and h = (t/2)·y'.
     */
    const slope = (Math.SQRT2 * tape) / 0.33;
    const byHand = 0.72 * slope * Math.hypot(1 + 0.2 / 0.22, 0.2 / 0.22);
    expect(rollCentreHeight.spread / byHand).toBeGreaterThan(0.9);
    expect(rollCentreHeight.spread / byHand).toBeLessThan(1.1);
  });

  test("a tape twice as coarse gives twice the spread", () => {
    const [fine, coarse] = [1e-3, 2e-3].map((tape) => linkageByTape(level, tape));
    expect(
      (coarse?.rollCentreHeight.spread ?? 0) / (fine?.rollCentreHeight.spread ?? 1),
    ).toBeCloseTo(2, 1);
  });

  test("joints on top of each other are refused", () => {
    const near = { ...level, upperOuter: { y: 0.68, z: 0.201 }, upperInner: { y: 0.35, z: 0.2 } };
    expect(() => linkageByTape(near, 5e-3)).toThrow(RangeError);
  });
});

describe("a tyre", () => {
  test("its rate is load over fall, and its factor is against its data", () => {
    const steps = [150, 250, 350].map((load) => ({
      load,
      hub: give(0.3e-3)(0.31 - (load * GRAVITY) / 258_000),
    }));
    const told = tyreRateByLoad(demoCar, "front", steps);
    expect(told.rate.value).toBeCloseTo(258_000, 0);
    expect(told.factor.value).toBeCloseTo(
      258_000 / tyreStiffnessOf(demoCar.front, 250 * GRAVITY),
      6,
    );
  });

  test("its print at its own pressure carries what the air does", () => {
    const load = 280;
    const area = (load * GRAVITY) / 200e3; // all of it by air
    const print = tyrePrint(demoCar, "front", {
      length: give(2e-3)(0.1),
      width: give(2e-3)(area / 0.1),
      load: give(1)(load),
    });
    expect(print.overPressure.value).toBeCloseTo(1, 10);
    expect(print.area.spread / print.area.value).toBeCloseTo(
      Math.hypot(0.02, (2e-3 * 0.1) / area),
      3,
    );
  });
});
