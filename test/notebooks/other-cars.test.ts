import { describe, expect, it } from "vitest";
import { demoCar } from "../../lib/car/demo-car.js";
import { readNotebooks } from "../../site/build/build.js";
import { compiled, onCar } from "../../site/chapter/on-car.js";
import {
  lookFaults,
  numberFaults,
  pictureFaults,
  sliderFaults,
  slipFaults,
  tried,
} from "../../site/chapter/on-cars.js";

const cars = tried.map((car) => [`the ${car.name}`, car] as const);

describe.each(readNotebooks())("chapter $name", async (notebook) => {
  const chapter = await compiled(notebook);

  it.each(cars)("works every number and question out for %s", (_, car) => {
    expect(numberFaults(onCar(chapter, car))).toEqual([]);
  });

  it.each(cars)("starts its sliders inside their ranges for %s", (_, car) => {
    expect(sliderFaults(onCar(chapter, car))).toEqual([]);
  });

  it("meets likely slips in most exercises, each apart from the answer and from the others", () => {
    expect(slipFaults(onCar(chapter, demoCar))).toEqual([]);
  });

  it.each(cars)("asks for two or three things that its sliders do for %s", (_, car) => {
    expect(lookFaults(onCar(chapter, car))).toEqual([]);
  });

  it.each(cars)("keeps every dot in its frame and every sentence readable for %s", (_, car) => {
    expect(pictureFaults(onCar(chapter, car))).toEqual([]);
  });
});
