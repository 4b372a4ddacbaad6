import { demoCar, formatCar, parseCar } from "@rollbook/lib";
import { expect, it } from "vitest";
import { fileFaultInWords } from "../../../site/say/file-fault.js";

it("what is wrong with a car file is told in the reader's units alone", () => {
  const { spring, tyre } = demoCar.front;
  const car = {
    ...demoCar,
    wheelbase: 8,
    front: { ...demoCar.front, spring: { ...spring, rate: 60 } },
  };
  const lean = { ...demoCar, rear: { ...demoCar.rear, tyre: { ...tyre, grip: 9 } } };
  const told = (one: typeof car) =>
    (parseCar(formatCar(one)).faults ?? []).map((fault) => fileFaultInWords(fault, "us"));
  expect(told(car)).toEqual([
    "wheelbase is 315 in but must be from 47.24 to 157.5 in.", // by hand: ÷ 0.0254
    "front.spring.rate is 0.3426 lbf/in but must be from 28.55 to 2284 lbf/in.", // by hand: ÷ 175.127
  ]);
  expect(told(lean as typeof car)[0]).toMatch(
    /^rear\.tyre\.grip is 9 but must be from [\d.]+ to [\d.]+\.$/,
  );
  const metric = "front.spring.rate is 60 N/m but must be from 5000 to 400000 N/m (5 to 400 N/mm).";
  expect(fileFaultInWords(metric, "metric")).toBe(metric);
  expect(fileFaultInWords("version is 3 but must be 1.", "us")).toBe("version is 3 but must be 1.");
});
