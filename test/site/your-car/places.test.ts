import { expect, test } from "vitest";
import { demoCar } from "../../../lib/car/demo-car.js";
import { carShape } from "../../../lib/car/file/car-shape.js";
import type { Shape } from "../../../lib/car/file/shape.js";
import { leavesOf } from "../../../site/pages/your-car/model/leaves.js";
import { nearestOnForm, placesIn } from "../../../site/pages/your-car/model/on-form.js";
import {
  keyOf,
  placesOf,
  shapeAt,
  valueAt,
  withValue,
} from "../../../site/pages/your-car/model/path.js";
import { type Item, sections } from "../../../site/pages/your-car/sections.js";
import { nameOf } from "../../../site/say/your-car/places.js";
import { partWords } from "../../../site/say/your-car/sections.js";

/** Every number and text that a car file can hold, list entries by their first. */
function leaves(shape: Shape, path: string): string[] {
  switch (shape.type) {
    case "group":
      return Object.entries(shape.fields).flatMap(([name, field]) =>
        leaves(field, path === "" ? name : `${path}.${name}`),
      );
    case "list":
      return leaves(shape.item, `${path}.0`);
    case "variant":
    case "record":
      return []; // joints of linkages, and how sure numbers are, are left to their file
    default:
      return [path];
  }
}

function placed(item: Item): string[] {
  if ("row" in item) return placesOf(item.row);
  if ("part" in item) return item.items.flatMap(placed);
  if ("list" in item) return item.columns.map((column) => `${item.list}.0.${column}`);
  return ["min", "max", "step"].map((end) => `${item.reach}.${end}`);
}

test("every field of the car file has one place on the page, and the page has no other", () => {
  const onPage = sections.flatMap(({ items }) => items.flatMap(placed));
  expect(onPage.toSorted()).toEqual(leaves(carShape, "").toSorted());
});

test("every field has a name in words of its own, telling apart what is alike", () => {
  const paths = leaves(carShape, "");
  const names = paths.map(nameOf);
  expect(new Set(names).size).toBe(paths.length);
  for (const [index, name] of names.entries()) expect(name, paths[index]).not.toMatch(/[{.]/);
});

test("a tick stands for a part that a car may not have", () => {
  for (const path of Object.keys(partWords)) expect(shapeAt(path)?.optional, path).toBe(true);
});

test("a place has the shape that the car file gives it", () => {
  expect(shapeAt("front.bar.positions.3.rate")).toMatchObject({ type: "number", max: 200e3 });
  expect(shapeAt("front.bar.positions.x.rate")).toBeUndefined();
  expect(shapeAt("toString")).toBeUndefined();
  expect(shapeAt("rear.colour")).toBeUndefined();
});

test("places in general stand for both axles and both sides", () => {
  expect(placesOf("{end}.camber.{side}")).toEqual([
    "front.camber.left",
    "front.camber.right",
    "rear.camber.left",
    "rear.camber.right",
  ]);
  expect(keyOf("rear.bar.positions.2.rate")).toBe("{end}.bar.positions.{n}.rate");
});

test("a value is put in, changed and taken out without touching the content it came from", () => {
  const content = { a: { b: [{ c: 1 }, { c: 2 }] }, other: 7 };
  const changed = withValue(content, "a.b.1.c", 5);
  expect(changed).toEqual({ a: { b: [{ c: 1 }, { c: 5 }] }, other: 7 });
  expect(withValue(changed, "a.b.0", undefined)).toEqual({ a: { b: [{ c: 5 }] }, other: 7 });
  expect(withValue(content, "x.y", 3)).toEqual({ ...content, x: { y: 3 } });
  expect(withValue(content, "x.y", undefined)).toEqual(content);
  expect(content.a.b[1]).toEqual({ c: 2 });
  expect(valueAt(content, "a.b.1.c")).toBe(2);
  expect(valueAt(content, "a.constructor")).toBeUndefined();
});

test("every place of a car is on the form, and a place that is not leads to the part around it", () => {
  const { bar: _, ...front } = demoCar.front;
  for (const car of [demoCar, { ...demoCar, front }]) {
    const content = { ...car };
    const onForm = new Set(sections.flatMap((section) => placesIn(section, content)));
    for (const { path } of leavesOf(content)) expect(onForm, path).toContain(path);
    expect(onForm.has("front.bar.motionRatio")).toBe(car === demoCar);
  }
  expect(nearestOnForm("rear.track", { ...demoCar })).toBe("rear.track");
  expect(nearestOnForm("front.bar.positions", { ...demoCar })).toBe("front.bar");
  expect(nearestOnForm("front.linkage.lower", { ...demoCar })).toBe("name");
});
