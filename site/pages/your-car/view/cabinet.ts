import { demoCar } from "@rollbook/lib";
import { ownCars, reader } from "@rollbook/page";
import { copyOfDemo, type Draft, draftOf } from "../model/draft.js";
import { freeName, type Ready, readyCar } from "../model/save.js";
import { words } from "../words.js";
import { drafts, dropDraft, keepCar, keepOwn, ownOf, showCar } from "./kept.js";

export const newId = (): string => `new-${Date.now().toString(36)}`;

/** Every name in use: the demo car's, those of kept cars and those of cars only begun. */
export const namesInUse = (): string[] => [
  demoCar.name,
  ...ownCars.now.value.cars.map(({ name }) => name),
  ...drafts().map(({ base, typed }) => typed.name?.text ?? String(base.name ?? "")),
];

/** What was typed at a kept car since, or the car as it is kept; or a car only begun. */
export function draftFor(id: string): Draft | undefined {
  const known = drafts().find((one) => one.id === id);
  if (known) return known;
  const car = ownCars.now.value.cars.find(({ name }) => name === id);
  return car && { ...draftOf(id, car, ownOf(id)), of: id };
}

/** A car to begin with: the workbook's own, or one of the reader's, under a name of its own. */
export function copyOf(name: string): Draft | undefined {
  const free = freeName(words.nameOfCopy(name), namesInUse());
  if (name === demoCar.name) return copyOfDemo(newId(), free);
  const car = ownCars.now.value.cars.find((one) => one.name === name);
  return car && draftOf(newId(), { ...car, name: free }, ownOf(name));
}

/** Puts a sound draft among the cars; undefined where it is not sound. */
export function saveDraft(
  draft: Draft,
  show: boolean,
): (Ready & { held: Promise<boolean> }) | undefined {
  const ready = readyCar(draft, reader.units);
  if (!ready) return undefined;
  const { name } = ready.car;
  const held = keepCar(ready.car, draft.of);
  void keepOwn(name, [...new Set([...draft.own, ...Object.keys(draft.typed)])]);
  void dropDraft(draft.id);
  if (show) void showCar(name);
  return { ...ready, held };
}
