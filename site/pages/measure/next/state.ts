import { effect, signal } from "@preact/signals";
import { orUndefined, possibleChanges, standingCar, USUAL_SPEED } from "@rollbook/lib";
import { type BandsSoFar, bandsBeside } from "../../../bands/bands.js";
import { inChosenClass } from "../../../store/classes.js";
import { carAtHand } from "../state/sheet.js";

const MOST_CHANGES = 6;

const bands = bandsBeside();
export const told = signal<BandsSoFar | undefined>(undefined);
export const asked = signal<"no" | "yes" | "cannot">("no");

/** Samples the car at hand, on and on while one reads. */
export function begin(): void {
  const car = inChosenClass(carAtHand.value);
  told.value = undefined;
  if (orUndefined(() => standingCar(car).handling) === undefined) {
    asked.value = "cannot";
    return;
  }
  asked.value = "yes";
  const changes = possibleChanges(car)
    .filter(({ by }) => by > 0)
    .slice(0, MOST_CHANGES);
  bands.begin({ car, measured: car, speed: USUAL_SPEED, changes }, (so) => {
    told.value = so;
  });
}

export function stop(): void {
  bands.drop();
  asked.value = "no";
}

/** The entry of the list that a link asked for. */
export const wanted = signal("");

/** Whoever comes by a link to an entry of the list has it worked out, and is led there. */
export function followLink(): void {
  const follow = () => {
    const [, anchor = ""] = /^#(next-[\w-]+)$/.exec(location.hash) ?? [];
    wanted.value = anchor;
    if (anchor === "" || asked.value === "yes") return;
    begin();
    document.getElementById("next")?.scrollIntoView();
  };
  follow();
  addEventListener("hashchange", follow);
}

/** Another car, or other numbers of it, are worked out when they are asked for. */
export function followCarAtHand(): void {
  let before = carAtHand.peek();
  effect(() => {
    if (carAtHand.value === before) return;
    before = carAtHand.value;
    told.value = undefined;
    stop();
  });
}
