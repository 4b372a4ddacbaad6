import { tyrePrint, tyreRateByLoad } from "@rollbook/lib";
import { allOf, found, lines, oddLines, tapeOf, type Work } from "./asked.js";

export const tyreRate: Work = (asked) => {
  const { car, form } = asked;
  const steps = lines(asked);
  if (steps.length < 2) return { missing: form.spec.columns.map(({ key }) => key) };
  const spread = tapeOf(asked);
  const told = tyreRateByLoad(
    car,
    form.end,
    steps.map(([load = 0, value = 0]) => ({ load, hub: { value, spread } })),
  );
  const now = car[form.end].tyre.stiffness ?? 1;
  return {
    found: [
      found("tyreRate", told.rate, ["stiffness", 0], {
        predicted: (told.rate.value / told.factor.value) * now,
      }),
      found("tyreFactor", told.factor, ["ratio", 2], {
        path: `${form.end}.tyre.stiffness`,
        predicted: now,
      }),
    ],
    remarks: oddLines(told.byChance),
  };
};

export const print: Work = (asked) => {
  const keys = ["length", "width", "load"] as const;
  const { means, missing } = allOf(asked, keys, (key) => (key === "load" ? "scale" : "tape"));
  if (!means) return { missing };
  const told = tyrePrint(asked.car, asked.form.end, means);
  const { length, width } = told.byData;
  return {
    found: [
      found("patchLength", means.length, ["lengthSmall", 0], { predicted: length }),
      found("patchWidth", means.width, ["lengthSmall", 0], { predicted: width }),
      found("patchArea", told.area, ["area", 0], { predicted: length * width }),
      found("overPressure", told.overPressure, ["ratio", 2]),
    ],
    remarks: [{ code: "printOnly" }],
  };
};
