import { computed, effect, signal } from "@preact/signals";
import { type Car, carFromJson, Refusal } from "@rollbook/lib";
import { format, reader } from "@rollbook/page";
import type { BandsSoFar } from "../../../bands/bands.js";
import { workOut as sample, stop } from "../../../bands/worked.js";
import { refusalInWords } from "../../../say/refusal.js";
import { chosenClass, inChosenClass } from "../../../store/classes.js";
import { contentOf } from "../model/draft.js";
import type { Content } from "../model/path.js";
import { type Summary, speed, summaryOf } from "../model/summary.js";
import { faults, openDraft } from "./open.js";

/** What a car comes to, or why that is not worked out. */
interface WorkedOut {
  /** The draft, and its content as text. */
  readonly of: string;
  readonly key: string;
  readonly summary: Summary | undefined;
  readonly refused: string;
}

const latest = signal<WorkedOut | undefined>(undefined);
const sampled = signal<BandsSoFar | undefined>(undefined);
/** The car that is sampled, as far as it is sound. */
export const sampledCar = signal<Car | undefined>(undefined);

/** What the open car came to when its values were last sound. */
export const workedOut = computed(() =>
  latest.value?.of === openDraft.value?.id ? latest.value : undefined,
);

/** How sure that is, from as many sampled cars as there was time for. */
export const sureness = computed(() => sampled.value);

const quiet = 400; // ms without a change until the car is worked out

/** Works the open car out each time that it has changed and is sound, and then how sure that is. */
export function followOpenCar(): void {
  let timer = 0;
  effect(() => {
    const draft = openDraft.value;
    clearTimeout(timer);
    if (!draft) {
      latest.value = undefined;
      begin(undefined);
      return;
    }
    if (faults.value.length > 0) return;
    const content = contentOf(draft);
    const key = JSON.stringify([content, chosenClass()?.rules]);
    const before = latest.peek();
    const isSame = before?.of === draft.id;
    if (before?.key === key) {
      if (!isSame) latest.value = { ...before, of: draft.id };
      return;
    }
    timer = window.setTimeout(() => workOut(draft.id, key, content), isSame ? quiet : 0);
  });
}

function workOut(of: string, key: string, content: Content): void {
  const { car: read } = carFromJson(content);
  if (!read) return;
  const car = inChosenClass(read);
  try {
    const summary = summaryOf(car, reader.units, format);
    latest.value = { of, key, summary, refused: "" };
    begin(car);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    latest.value = { of, key, summary: undefined, refused: refusalInWords(error, reader) };
    begin(undefined);
  }
}

/** Begins to sample cars like this one; drops what was under way. */
function begin(car: Car | undefined): void {
  sampled.value = undefined;
  sampledCar.value = car;
  if (!car) {
    stop();
    return;
  }
  sample({ car, measured: car, speed, changes: [] }, (told) => {
    sampled.value = told;
  });
}
