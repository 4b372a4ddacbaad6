import {
  type Car,
  type CarClass,
  type ClassFact,
  factsInClass,
  formatClass,
  orUndefined,
} from "@rollbook/lib";
import { forFileName, saveFile } from "@rollbook/page";
import { classWords as words } from "../../../say/your-car/classes.js";
import { classesNow, setClasses } from "../../../store/classes.js";
import { say } from "../../../ui/notice.js";
import { draftOf } from "../model/draft.js";
import { freeName } from "../model/save.js";
import { begin } from "./doing.js";
import { namesInUse, newId } from "./kept.js";

/** Keeps a class in place of one of the same name, and lets the course go by it. */
export function keepClass(carClass: CarClass): Promise<boolean> {
  const others = classesNow().classes.filter(({ name }) => name !== carClass.name);
  return setClasses({ classes: [...others, carClass], current: carClass.name });
}

/** Lets the course go by a class, or by none. */
export async function goBy(name: string | undefined): Promise<void> {
  const { classes } = classesNow();
  const held = await setClasses(name === undefined ? { classes } : { classes, current: name });
  const done = name === undefined ? words.nowNone : words.nowGoesBy(name);
  say(held ? done : words.notKept);
}

/** Deletes a class; it can be taken back. */
export async function removeClass(gone: CarClass): Promise<void> {
  const before = classesNow();
  const { current } = before;
  const classes = before.classes.filter(({ name }) => name !== gone.name);
  const stays = current !== undefined && current !== gone.name;
  const held = await setClasses(stays ? { classes, current } : { classes });
  say(held ? words.removed(gone.name) : words.notKept, () => void setClasses(before));
}

export const classAsFile = (carClass: CarClass): void =>
  saveFile(`${forFileName(carClass.name, "class")}.class.json`, formatClass(carClass));

/** Opens a new car that is like the one the class begins from. */
export const beginFromBase = (car: Car): void =>
  begin(draftOf(newId(), { ...car, name: freeName(car.name, namesInUse()) }));

/** What of a car holds and what does not; nothing where it cannot stand. */
export const factsIn = (car: Car, carClass: CarClass): readonly ClassFact[] | undefined =>
  orUndefined(() => factsInClass(car, carClass));
