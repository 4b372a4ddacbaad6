import { batch } from "@preact/signals";
import type { Content } from "@rollbook/lib";
import { ownCars } from "@rollbook/page";
import { words } from "../../../say/measure/words.js";
import { drafts, keepDraft, ownPlaces, ownPlacesOf } from "../../../store/car-drafts.js";
import { say } from "../../../ui/notice.js";
import { type Before, putBack, type Write, withMeasured, written } from "../model/write.js";
import { carAtHand, measuring } from "./sheet.js";

const draftOf = (car: string) => drafts.now.value.find(({ of }) => of === car);

/** Whether something else is typed at that place of the car, and not saved. */
export const isTypedElsewhere = (path: string): boolean =>
  draftOf(carAtHand.value.name)?.typed[path] !== undefined;

/** Puts a car among the kept ones in place of the one of its name. */
function keepCar(car: (typeof ownCars.now.value.cars)[number]): Promise<boolean> {
  const { cars, ...rest } = ownCars.now.value;
  return ownCars.set({ ...rest, cars: cars.map((one) => (one.name === car.name ? car : one)) });
}

/**
 * Writes a measured number into the car at hand, and into what of it is open on its own page; says so
 * once the device has kept it, with a way back.
 *
 * @param what - how the number is called
 * @param stood - how what stood there is shown
 * @param note - for a number that was learned: takes down that it was taken over, or given back
 */
export async function write(
  one: Write,
  what: string,
  stood: string,
  note?: { readonly learned: (before: Before) => void; readonly unlearned: () => void },
): Promise<void> {
  const car = carAtHand.value;
  const by = { ...measuring(), ...(note && { how: "estimated" as const }) };
  const result = written(car, [one], by);
  if ("faults" in result) return say(words.cannotWrite(result.faults[0] ?? ""));
  const draft = draftOf(car.name);
  const own = ownPlacesOf(car.name);
  const kept = batch(() => {
    for (const before of result.before) note?.learned(before);
    if (draft !== undefined) {
      const { [one.path]: _, ...typed } = draft.typed;
      void keepDraft({ ...draft, base: withMeasured(draft.base, one, by), typed });
    }
    void ownPlaces.set({
      ...ownPlaces.now.value,
      [car.name]: [...new Set([...own, one.path])],
    });
    return keepCar(result.car);
  });
  if (!(await kept)) return say(words.notKept);
  const done = stood === "" ? words.wrote(what, car.name) : words.wroteOver(what, car.name, stood);
  const typedBefore = draft?.typed[one.path];
  say(done, () => {
    note?.unlearned();
    void back(car.name, result.before, typedBefore && { [one.path]: typedBefore });
  });
}

/** What stood there stands there again; the rest of the car stays as it is by now. */
async function back(
  name: string,
  before: readonly Before[],
  typed: Readonly<Record<string, NonNullable<ReturnType<typeof draftOf>>["typed"][string]>> = {},
): Promise<void> {
  const car = ownCars.now.value.cars.find((one) => one.name === name);
  if (car === undefined) return;
  const kept = batch(() => {
    const draft = draftOf(name);
    if (draft !== undefined)
      void keepDraft({
        ...draft,
        base: putBack(draft.base, before),
        typed: { ...draft.typed, ...typed },
      });
    return keepCar(putBack(car as unknown as Content, before) as unknown as typeof car);
  });
  say((await kept) ? words.takenBack : words.notKept);
}
