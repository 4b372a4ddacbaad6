import {
  apparentRollStiffnessOf,
  axleWeightsOf,
  motionRatioFromSteps,
  rideRateByBallast,
  rollSplitBySill,
  rollSplitOf,
  rollStiffnessBySill,
  tyreStiffnessOf,
  wheelRateOf,
} from "@rollbook/lib";
import { type Asked, allOf, found, lines, oddLines, tapeOf, type Work } from "./asked.js";
import { meanAt } from "./input.js";
import { specOf } from "./spec.js";

export const rideRate: Work = (asked) => {
  const { car, form } = asked;
  const { end } = form;
  const spread = tapeOf(asked) / Math.SQRT2; // mean of both sides
  const steps = lines(asked)
    .filter(([added = 0]) => added > 0)
    .map(([added = 0, left = 0, right = 0]) => ({
      added,
      fall: { value: (left + right) / 2, spread },
    }));
  if (steps.length === 0) return { missing: form.spec.columns.map(({ key }) => key) };
  const told = rideRateByBallast(car, end, steps);
  const tyre = tyreStiffnessOf(car[end], axleWeightsOf(car)[end] / 2);
  const own = 1 / (1 / wheelRateOf(car[end]) + 1 / tyre);
  return {
    found: [
      found("rideRate", told.rate, ["stiffness", 1], { predicted: own }),
      ...ofSpring(asked, told),
    ],
    remarks: [
      ...oddLines(told.byChance),
      ...(told.misfit === undefined
        ? [{ code: "tyreSofter" }]
        : [{ code: Math.abs(told.misfit) > 2 ? "misfit" : "fits", value: told.misfit }]),
    ],
  };
};

/** What follows for the wheel and its spring, where the tyre leaves room for them. */
function ofSpring({ car, form: { end } }: Asked, told: ReturnType<typeof rideRateByBallast>) {
  const { wheelRate, motionRatio, springRate } = told;
  const { spring } = car[end];
  const wheel =
    wheelRate &&
    found("wheelRate", wheelRate, ["stiffness", 1], { predicted: wheelRateOf(car[end]) });
  const ratio =
    motionRatio &&
    found("motionRatioBySpring", motionRatio, ["ratio", 3], {
      path: `${end}.spring.motionRatio`,
      predicted: spring.motionRatio,
    });
  const rate =
    springRate &&
    found("springRateByRatio", springRate, ["stiffness", 1], {
      path: `${end}.spring.rate`,
      predicted: spring.rate,
    });
  return [wheel, ratio, rate].filter((one) => one !== undefined);
}

export const sillWeight: Work = (asked) => {
  const { car, form } = asked;
  const { means, missing } = allOf(asked, ["arm", "apart"] as const, () => "tape");
  const steps = lines(asked).filter(([added = 0]) => added > 0);
  if (!means) return { missing };
  if (steps.length === 0) return { missing: form.spec.columns.map(({ key }) => key) };
  const spread = (Math.SQRT2 * tapeOf(asked)) / means.apart.value;
  const leans = steps.map(([added = 0, fall = 0, rise = 0]) => ({
    added,
    lean: { value: Math.atan((fall + rise) / means.apart.value), spread },
  }));
  const told = rollStiffnessBySill(car, means.arm, leans);
  const apparent = apparentRollStiffnessOf(car);
  const model = apparent + told.leaning;
  const split = splitOf(asked);
  return {
    found: [
      found("apparent", told.apparent, ["rollStiffness", 0], { predicted: apparent }),
      found("stiffness", told.stiffness, ["rollStiffness", 0], { predicted: model }),
      ...(split ? [found("rollSplit", split, ["share", 1], { predicted: rollSplitOf(car) })] : []),
    ],
    remarks: [...oddLines(told.byChance), ...(split ? [] : [{ code: "noSplit" }])],
  };
};

/** The front's share, where four scales were read without the weight, in their own form, and with it. */
function splitOf({ car, sheet, form }: Asked) {
  const unloaded = { spec: specOf("four-scales"), end: form.end };
  const wheel = (at: typeof form, before: string) => (end: string, side: string) =>
    meanAt(sheet, at, `${before}${end}${side}`, "scale");
  const [without, loaded] = [wheel(unloaded, ""), wheel(form, "loaded.")].map((read) => {
    const [fl, fr] = [read("front", "Left"), read("front", "Right")];
    const [rl, rr] = [read("rear", "Left"), read("rear", "Right")];
    return fl && fr && rl && rr
      ? { front: { left: fl, right: fr }, rear: { left: rl, right: rr } }
      : undefined;
  });
  if (without === undefined || loaded === undefined) return undefined;
  return rollSplitBySill(car, without, loaded);
}

export const motionRatio: Work = (asked) => {
  const { car, form } = asked;
  const steps = lines(asked);
  if (steps.length < 2) return { missing: form.spec.columns.map(({ key }) => key) };
  const [[hub0 = 0, spring0 = 0] = []] = steps;
  const told = motionRatioFromSteps(
    steps.map(([hub = 0, spring = 0]) => ({ rise: hub - hub0, shortening: spring0 - spring })),
    tapeOf(asked),
  );
  const path = `${form.end}.spring.motionRatio`;
  return {
    found: [
      found("motionRatio", told.ratio, ["ratio", 3], {
        path,
        predicted: car[form.end].spring.motionRatio,
      }),
      ...(told.perTravel && told.changes ? [found("perTravel", told.perTravel, ["ratio", 2])] : []),
    ],
    remarks: told.perTravel
      ? [{ code: told.changes ? "ratioChanges" : "ratioStraight" }]
      : [{ code: "fewSteps" }],
  };
};
