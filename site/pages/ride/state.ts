import { computed, signal } from "@preact/signals";
import { demoCar, type Measured } from "@rollbook/lib";
import { chosenCar, forFileName, ownCars, reader, saveFile } from "@rollbook/page";
import { words } from "../../say/measure/ride.js";
import { toShown } from "../../say/units.js";
import { measurements } from "../../store/measurements.js";
import { withRide } from "../../store/ride-reading.js";
import {
  forgetRide,
  type KeptRide,
  keepPiece,
  keepRide,
  type Packed,
  rideKept,
  ridesKept,
} from "../../store/rides.js";
import { say } from "../../ui/notice.js";
import { workedOut } from "./work/beside.js";
import type { Told } from "./work/work.js";

/** The rides of this device, the latest first; nothing until they were looked up. */
export const rides = signal<readonly KeptRide[] | undefined>(undefined);

/** Which ride is looked at, and which one it is held against. */
export const chosen = signal<{ readonly id: string; readonly other?: string } | undefined>(
  undefined,
);

/** What came of looking at it; nothing while it is worked out. */
export const outcome = signal<{ readonly told?: Told; readonly refused?: string } | undefined>(
  undefined,
);

/** The car that the course shows, and whether it takes readings. */
export const carAtHand = computed(() => chosenCar(ownCars.now.value));
export const isOwn = computed(() => carAtHand.value.name !== demoCar.name);

/** When a ride began, as its reader has it. */
export const nameOf = ({ begun }: KeptRide): string =>
  new Date(begun).toLocaleString("en-GB", { dateStyle: "medium", timeStyle: "medium" });

export async function lookAgain(): Promise<void> {
  rides.value = await ridesKept();
}

/** Looks at a ride, held against another where one is chosen. */
export async function lookAt(id: string, other?: string): Promise<void> {
  const mine = { id, ...(other !== undefined && { other }) };
  chosen.value = mine;
  outcome.value = undefined;
  const ride = await rideKept(id);
  const second = other === undefined ? undefined : await rideKept(other);
  const answer = await workedOut({ kind: "facts", ride, ...(second && { other: second }) });
  if (chosen.value !== mine) return;
  if (answer.kind === "facts") outcome.value = { told: answer.told };
  if (answer.kind === "refused") outcome.value = { refused: answer.why };
}

export async function saveTable(ride: KeptRide): Promise<void> {
  const answer = await workedOut({ kind: "table", ride: await rideKept(ride.id) });
  if (answer.kind === "table")
    saveFile(words.fileName(forFileName(ride.begun, "phone")), answer.text, "text/csv");
}

export async function remove(ride: KeptRide): Promise<void> {
  const whole = await rideKept(ride.id);
  if (!(await forgetRide(ride.id))) {
    say(words.notKept);
    return;
  }
  if (chosen.value?.id === ride.id || chosen.value?.other === ride.id) chosen.value = undefined;
  await lookAgain();
  say(words.removed, () => void keepWhole(ride, whole));
}

/** Keeps a ride that is there as a whole; false where the device refused. */
export async function keepWhole(ride: KeptRide, whole: Packed): Promise<boolean> {
  const kept = (await keepRide(ride)) && (await keepPiece(ride.id, 0, whole));
  if (!kept) say(words.notKept);
  await lookAgain();
  return kept;
}

/** Keeps a roll gradient as a reading of the car at hand, in the reader's units. */
export async function takeReading({ value, spread }: Measured): Promise<void> {
  const text = (si: number) => ({
    text: String(Number(toShown("rollGradient", si, reader.units).toFixed(3))),
    units: reader.units,
  });
  const { name } = carAtHand.value;
  const now = new Date();
  const two = (part: number) => String(part).padStart(2, "0");
  const when = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  const before = measurements.now.value;
  const reading = { gradient: text(value), spread: text(spread) };
  const after = withRide(before, name, reading, { when, by: before.by });
  if (after === undefined) {
    say(words.full);
    return;
  }
  const kept = await measurements.set(after);
  if (kept) say(words.taken(name), () => void measurements.set(before));
  else say(words.notKept);
}
