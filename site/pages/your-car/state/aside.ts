/** Kept cars that cannot be read as they are: their ranges have changed, or the text is broken. */
import { carFromJson } from "@rollbook/lib";
import { forFileName, letAsideGo, reader, saveFile } from "@rollbook/page";
import { carWords as words } from "../../../say/your-car/cars.js";
import { keepDraft } from "../../../store/car-drafts.js";
import { say } from "../../../ui/notice.js";
import type { Draft } from "../model/draft.js";
import { takeIn } from "../model/take-in.js";
import { goTo } from "../view/go-to.js";
import { namesInUse, newId, openId } from "./kept.js";

interface AsideCar {
  readonly name: string;
  /** The first thing that is wrong with it. */
  readonly why: string;
  readonly mend?: Draft;
}

const textOf = (part: unknown): string => (typeof part === "string" ? part : JSON.stringify(part));

const nameOf = (part: unknown): string => {
  const { name } = (part ?? {}) as { name?: unknown };
  return typeof name === "string" ? name.slice(0, 60) : words.unnamed;
};

export function readAside(part: unknown): AsideCar {
  const { faults = [] } = carFromJson(part);
  const name = nameOf(part);
  const read = takeIn(textOf(part), namesInUse(), newId(), reader.units);
  const why = [faults[0] ?? "", faults.length > 1 ? words.moreFaults(faults.length - 1) : ""];
  const mend = "mend" in read ? read.mend : undefined;
  return { name, why: why.filter(Boolean).join(" "), ...(mend && { mend }) };
}

/** Opens the car to be mended; it is let go here once the draft is kept. */
export async function mendAside(part: unknown, draft: Draft): Promise<void> {
  const kept = keepDraft(draft);
  void openId.set(draft.id);
  goTo("at-name");
  if (await kept) await letAsideGo("cars", [part]);
  else say(words.notKept);
}

export const fileOfAside = (part: unknown): void =>
  saveFile(`${forFileName(nameOf(part), "car")}.car.json`, textOf(part));

export async function dropAside(part: unknown, name: string): Promise<void> {
  say((await letAsideGo("cars", [part])) ? words.removed(name) : words.notKept);
}
