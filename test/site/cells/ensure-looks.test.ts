import { expect, it } from "vitest";
import { parameters } from "../../../lib/parameters.js";
import { ensureLooks } from "../../../site/cells/node/ensure-looks.js";
import { isLeast, isMost, type Look, looksLeft } from "../../../site/cells/spec.js";

const inputs = {
  load: { ...parameters.tyreLoad, min: 0, max: 1000, step: 50, start: 0 },
};
const figureWith = (looks: readonly Look<typeof inputs>[], after = "question") => ({
  ...{ id: "picture", title: "A picture", inputs, panels: [], says: () => "", after },
  looks,
});
const most = { ask: "All of it.", done: ({ load }: { load: number }) => isMost(load, inputs.load) };
const least = { ask: "None.", done: ({ load }: { load: number }) => isLeast(load, inputs.load) };

it("asks for what is not so from the start", () => {
  expect(looksLeft(figureWith([most, least]))).toEqual([most]);
});

it("lets an end be an end within three hundredths of the range", () => {
  expect([969, 970, 1000].map((load) => isMost(load, inputs.load))).toEqual([false, true, true]);
  expect([31, 30, 0].map((load) => isLeast(load, inputs.load))).toEqual([false, true, true]);
});

it("is refused where no slider does it, or where no prediction comes before", () => {
  const beyond = { ask: "More than all.", done: ({ load }: { load: number }) => load > 1000 };
  expect(() => ensureLooks(figureWith([most]))).not.toThrow();
  expect(() => ensureLooks(figureWith([most, beyond]))).toThrow(
    "picture: no slider does this: More than all.",
  );
  const { after: _, ...alone } = figureWith([most]);
  expect(() => ensureLooks(alone)).toThrow("picture: looks without a prediction before");
});
