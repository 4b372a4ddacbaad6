import { signal } from "@preact/signals";
import { chosenCar } from "@rollbook/page";
import { words } from "../../../say/measure/ride.js";
import { type KeptRide, keepPiece, keepRide } from "../../../store/rides.js";
import { say } from "../../../ui/notice.js";
import { lookAgain } from "../state.js";
import { listen } from "./sensors.js";

/** The ride that is being recorded: seconds of it are on the device. */
export const recording = signal<{ readonly ride: KeptRide; readonly seconds: number } | undefined>(
  undefined,
);

const PIECE = 0.5; // s between two pieces
const LONGEST = 3 * 3600; // s

/** What was felt and not kept yet, and what was. */
let piece = { number: 0, felt: [] as number[], fixes: [] as number[], since: 0, begun: 0 };
let awake: WakeLockSentinel | undefined;

/** Begins a ride: a note of it first, so that what comes after a killed page is found. */
export async function begin(): Promise<void> {
  const begun = new Date().toISOString();
  const ride: KeptRide = { id: begun, begun, car: chosenCar().name, from: "phone" };
  if (!(await keepRide(ride))) {
    say(words.notKept);
    return;
  }
  piece = { number: 0, felt: [], fixes: [], since: 0, begun: 0 };
  recording.value = { ride, seconds: 0 };
  listen((of, row) => take(ride, of, row));
  document.addEventListener("visibilitychange", keepRest);
  awake = await navigator.wakeLock?.request("screen").catch(() => undefined);
}

function take(ride: KeptRide, of: "felt" | "fixes", row: readonly number[]): void {
  const [time = 0] = row;
  if (piece.begun === 0) [piece.begun, piece.since] = [time, time];
  piece[of].push(...row);
  if (time - piece.since >= PIECE) void keepPart(ride, time);
  if (time - piece.begun > LONGEST) void end();
}

async function keepPart(ride: KeptRide, time: number): Promise<void> {
  const { number, felt, fixes, begun } = piece;
  piece = { number: number + 1, felt: [], fixes: [], since: time, begun };
  const kept = await keepPiece(ride.id, number, {
    felt: Float64Array.from(felt),
    fixes: Float64Array.from(fixes),
  });
  if (recording.value?.ride.id !== ride.id) return;
  if (kept) recording.value = { ride, seconds: Math.floor(time - begun) };
  else {
    await end();
    say(words.notKeptAll);
  }
}

const keepRest = (): void => {
  const now = recording.value;
  if (now && piece.felt.length > 0) void keepPart(now.ride, piece.felt.at(-7) ?? piece.since);
};

/** Ends the ride with what is not kept yet. */
export async function end(): Promise<void> {
  const now = recording.value;
  if (now === undefined) return;
  listen();
  recording.value = undefined;
  document.removeEventListener("visibilitychange", keepRest);
  await awake?.release().catch(() => {});
  const { number, felt, fixes } = piece;
  const rest = { felt: Float64Array.from(felt), fixes: Float64Array.from(fixes) };
  const kept = felt.length === 0 || (await keepPiece(now.ride.id, number, rest));
  say(kept ? words.kept : words.notKeptAll);
  await lookAgain();
}
