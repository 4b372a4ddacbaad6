/** What the reader can do on the page; each says what came of it once the device has answered. */
import { batch } from "@preact/signals";
import { type Car, demoCar, formatCar } from "@rollbook/lib";
import { forFileName, ownCars, reader, saveFile } from "@rollbook/page";
import { carWords as words } from "../../../say/your-car/cars.js";
import { drafts, keepDraft } from "../../../store/car-drafts.js";
import { say } from "../../../ui/notice.js";
import { type Draft, withTyped } from "../model/draft.js";
import type { Path } from "../model/path.js";
import { readyCar } from "../model/save.js";
import { goTo } from "../view/go-to.js";
import {
  copyOf,
  draftFor,
  dropCar,
  dropDraft,
  keepCar,
  keepInPlaceOf,
  openId,
  showCar,
} from "./kept.js";
import { faults, openDraft } from "./open.js";

/** Says a sentence once the device has kept what it is about; else that it was not kept. */
async function sayOnce(
  kept: readonly Promise<boolean>[],
  sentence: string,
  undo?: () => void,
): Promise<void> {
  const held = await Promise.all(kept);
  say(held.every(Boolean) ? sentence : words.notKept, undo);
}

async function keepOrSay(kept: Promise<boolean>): Promise<void> {
  if (!(await kept)) say(words.notKept);
}

/** Changes the open car. */
export function change(changed: (draft: Draft) => Draft): void {
  const draft = openDraft.value;
  if (draft) void keepOrSay(keepDraft(changed(draft)));
}

/** Takes what was typed at a place. */
export const type = (path: Path, text: string): void =>
  change((draft) => withTyped(draft, path, text, reader.units));

const open = (id: string): void => void openId.set(id);

/** Opens a draft or a kept car. */
export function edit(id: string): void {
  open(id);
  goTo("at-name");
}

/** Takes a draft up. */
export function begin(draft: Draft | undefined): void {
  if (!draft) return;
  void keepOrSay(batch(() => [keepDraft(draft), openId.set(draft.id)] as const)[0]);
  goTo("at-name");
}

export const startFromDemo = (): void => begin(copyOf(demoCar.name));

export const copy = (car: Car): void => begin(copyOf(car.name));

export const asFile = (car: Car): void =>
  saveFile(`${forFileName(car.name, "car")}.car.json`, formatCar(car));

/** Lets the course show a car. */
export async function show(name: string): Promise<void> {
  const held = await showCar(name);
  if (!held) return say(words.notKept);
  say(ownCars.inFirst ? words.nowShows(name) : words.notShownYet(name));
}

/** Puts the open car among the kept ones, if it is sound. */
export async function save(andShow: boolean): Promise<void> {
  const draft = openDraft.value;
  const ready = draft && faults.value.length === 0 ? readyCar(draft, reader.units) : undefined;
  if (!draft || !ready) {
    say(words.cannotSave);
    goTo("faults");
    return;
  }
  const { car, notes } = ready;
  const held = await keepInPlaceOf(draft, car, andShow);
  const done = andShow ? keptAndShown(car.name) : words.kept(car.name);
  say([held ? done : words.notKept, ...notes].join(" "));
}

const keptAndShown = (name: string): string =>
  ownCars.inFirst ? words.keptAndShown(name) : `${words.kept(name)} ${words.notShownYet(name)}`;

/** Drops what was typed since the car was saved, or a car that never was. */
export function discard(): void {
  const before = openDraft.value;
  if (!before) return;
  const dropped = batch(() => {
    open(before.of !== undefined && draftFor(before.of) ? before.of : "");
    return dropDraft(before.id);
  });
  void sayOnce([dropped], words.discarded, () => begin(before));
}

/** Deletes a kept car, and what was typed at it since. */
export function remove(car: Car): void {
  const { current } = ownCars.now.value;
  const draft = drafts.now.value.find(({ of }) => of === car.name);
  const wasOpen = openDraft.value?.of === car.name;
  const dropped = batch(() => {
    if (wasOpen) open("");
    return [dropCar(car.name), ...(draft ? [dropDraft(draft.id)] : [])];
  });
  const bringBack = () =>
    batch(() => {
      const shown = current === car.name;
      const kept = [keepCar(car, undefined, shown), ...(draft ? [keepDraft(draft)] : [])];
      void sayOnce(kept, "");
    });
  void sayOnce(dropped, words.removed(car.name), bringBack);
}
