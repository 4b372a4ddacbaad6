import {
  axleWeightsOf,
  GRAVITY,
  heightByRaisedAxle,
  onFourScales,
  totalMassOf,
} from "@rollbook/lib";
import { allOf, found, type Work } from "./asked.js";
import { choiceOf } from "./input.js";
import type { Remark } from "./result.js";

export const fourScales: Work = (asked) => {
  const keys = ["frontLeft", "frontRight", "rearLeft", "rearRight"] as const;
  const { means, missing } = allOf(asked, keys, () => "scale");
  if (!means) return { missing };
  const told = onFourScales(asked.car, {
    front: { left: means.frontLeft, right: means.frontRight },
    rear: { left: means.rearLeft, right: means.rearRight },
  });
  const { car } = asked;
  return {
    found: [
      found("mass", told.mass, ["mass", 1], { predicted: totalMassOf(car).mass }),
      found("frontShare", told.frontShare, ["share", 2]),
      found("leftShare", told.leftShare, ["share", 2]),
      found("crossShare", told.crossShare, ["share", 2]),
      found("bodyMass", told.bodyMass, ["mass", 1], { path: "body.mass" }),
      found("bodyBehind", told.bodyBehindFrontAxle, ["length", 3], {
        path: "body.behindFrontAxle",
      }),
      found("bodyLeft", told.bodyLeftOfCentre, ["length", 3], { path: "body.leftOfCentre" }),
    ],
    remarks: [],
  };
};

export const raisedAxle: Work = (asked) => {
  const { car, sheet, form } = asked;
  const keys = ["level", "lifted", "rise", "frontHub", "rearHub"] as const;
  const weighed = (key: string) => key === "level" || key === "lifted";
  const { means, missing } = allOf(asked, keys, (key) => (weighed(key) ? "scale" : "tape"));
  if (!means) return { missing };
  const [raised, at, springs] = ["raised", "at", "springs"].map((key) =>
    choiceOf(sheet, form, key),
  );
  const told = heightByRaisedAxle(car, {
    raised: raised === "rear" ? "rear" : "front",
    level: means.level,
    lifted: means.lifted,
    rise: means.rise,
    at: at === "tyres" ? "tyres" : "hubs",
    hubs: { front: means.frontHub, rear: means.rearHub },
    locked: springs !== "free",
  });
  const down = axleWeightsOf(car)[raised === "rear" ? "front" : "rear"] / GRAVITY;
  const off = Math.abs(means.level.value / down - 1);
  const remarks: Remark[] = [
    ...(told.springs > 0 ? [{ code: "springsTaken", value: told.springs }] : []),
    ...(told.tyres > 0 ? [{ code: "tyresTaken", value: told.tyres }] : []),
    ...(off > 0.05 ? [{ code: "weightDiffers", value: down }] : []),
  ];
  return {
    found: [
      found("height", told.height, ["lengthSmall", 0], { predicted: totalMassOf(car).height }),
      found("bodyHeight", told.bodyHeight, ["lengthSmall", 0], { path: "body.height" }),
    ],
    remarks,
  };
};
