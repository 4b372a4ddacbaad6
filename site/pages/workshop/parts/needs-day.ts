import { element } from "@rollbook/page";
import { theDay } from "../day/open-day.js";
import { words } from "../words.js";

/** What a view says that has no day to work with, and where to get one. */
export function needsDay(sentence: string = words.noDay): HTMLElement[] {
  return [element("p", {}, `${sentence} `, element("a", { href: "#plan" }, words.toPlan), ".")];
}

/** Which day it is about. */
export const dayLine = (): HTMLElement =>
  element("p", { class: "quiet" }, words.dayOpen(theDay()?.name ?? ""));
