import { expect, it } from "vitest";
import { parameters } from "../../../lib/parameters.js";
import { from } from "../../../site/cells/spec.js";

const named = { quantity: "force", name: "Load", start: 40, min: 0, max: 100, step: 10 } as const;

it("gives a slider another start, name or range", () => {
  expect(from(parameters.tyreLoad, named)).toEqual({ ...parameters.tyreLoad, ...named });
});

it("widens a range by whole steps until it holds what the slider starts from", () => {
  expect(from(parameters.tyreLoad, { ...named, start: 121 })).toMatchObject({ min: 0, max: 130 });
  expect(from(parameters.tyreLoad, { ...named, start: -20 })).toMatchObject({ min: -20, max: 100 });
});
