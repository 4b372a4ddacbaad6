import { computed } from "@preact/signals";
import { demoCar } from "@rollbook/lib";
import { chosenCar, ownCars, reader } from "@rollbook/page";
import { words } from "../../../say/measure/words.js";
import { type Stamp, withReading, withStamp } from "../../../store/measured-sheets.js";
import { measurements } from "../../../store/measurements.js";
import { say } from "../../../ui/notice.js";
import { choiceAt, endAt, type FormPlace, formAt, type Sheet } from "../model/input.js";
import type { Spec } from "../model/spec.js";

/** The car that the course shows, which readings are about. */
export const carAtHand = computed(() => chosenCar(ownCars.now.value));

/** Whether numbers can be written into it. */
export const isOwn = computed(() => carAtHand.value.name !== demoCar.name);

/** All readings of that car. */
export const sheet = computed<Sheet>(
  () => measurements.now.value.sheets[carAtHand.value.name] ?? {},
);

/** When and by whom a form of that car was last typed at. */
export const stampOf = (form: FormPlace): Stamp | undefined =>
  measurements.now.value.read[carAtHand.value.name]?.[formAt(form)];

/** The day on this device's clock, YYYY-MM-DD. */
export function today(): string {
  const now = new Date();
  const two = (part: number) => String(part).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

export const measuring = (): Stamp => ({ when: today(), by: measurements.now.value.by });

async function keepOrSay(kept: Promise<boolean>): Promise<void> {
  if (!(await kept)) say(words.notKept);
}

/** Takes what was typed at a place of a form. */
export function type(form: FormPlace, place: string, text: string): void {
  const car = carAtHand.value.name;
  const typed = { text, units: reader.units };
  const all = withReading(measurements.now.value, car, place, typed);
  void keepOrSay(measurements.setTyped(withStamp(all, car, formAt(form), measuring())));
}

export const typeBy = (by: string): void =>
  void keepOrSay(measurements.setTyped({ ...measurements.now.value, by }));

export const choose = (form: FormPlace, key: string, value: string): void =>
  type(form, choiceAt(form, key), value);

export const endOf = (spec: Spec): "front" | "rear" =>
  sheet.value[endAt(spec)]?.text === "rear" ? "rear" : "front";

export const chooseEnd = (spec: Spec, end: "front" | "rear"): void =>
  type({ spec, end }, endAt(spec), end);

/** Empties a form; its tools and which axle stay. */
export function clear(form: FormPlace): void {
  const car = carAtHand.value.name;
  const before = measurements.now.value;
  const own = sheet.value;
  const gone = Object.keys(own).filter(
    (place) => place.startsWith(`${formAt(form)}.`) && !/\.(tool\.\w+|end)$/.test(place),
  );
  const left = Object.fromEntries(Object.entries(own).filter(([place]) => !gone.includes(place)));
  const kept = measurements.set({ ...before, sheets: { ...before.sheets, [car]: left } });
  const back = () => {
    const now = measurements.now.value;
    const sheets = { ...now.sheets, [car]: { ...now.sheets[car], ...own } };
    void keepOrSay(measurements.set({ ...now, sheets }));
  };
  void kept.then((held) => say(held ? words.cleared : words.notKept, back));
}
