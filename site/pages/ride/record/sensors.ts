import { signal } from "@preact/signals";
import { DEGREE } from "@rollbook/lib";

/** How far asking for the sensors came. */
export type Asked =
  | "not-asked"
  | "asking"
  | "none"
  | "insecure"
  | "refused"
  | "silent"
  | "answering";

export const asked = signal<Asked>(window.isSecureContext ? "not-asked" : "insecure");
/** Samples in the last second, and whether satellites tell a speed. */
export const heard = signal({ rate: 0, satellites: false });

/** time, force x y z, turn x y z, s and SI; or time, speed, course. */
type Listener = (of: "felt" | "fixes", row: readonly number[]) => void;
let listener: Listener | undefined;

/** Who takes samples from now on; nobody where it is left out. */
export const listen = (take?: Listener): void => {
  listener = take;
};

interface MayAsk {
  requestPermission?: () => Promise<string>;
}

const WAITS = 3000; // ms for a first sample; only a device without sensors is silent so long

/** Asks for the sensors, on a tap as browsers want it, and for position, which may be refused. */
export async function ask(): Promise<void> {
  if (asked.value === "insecure") return;
  if (!("DeviceMotionEvent" in window)) {
    asked.value = "none";
    return;
  }
  asked.value = "asking";
  try {
    const answer = (await (DeviceMotionEvent as MayAsk).requestPermission?.()) ?? "granted";
    if (answer !== "granted") {
      asked.value = "refused";
      return;
    }
  } catch {
    asked.value = "refused";
    return;
  }
  window.addEventListener("devicemotion", feel);
  setTimeout(() => {
    if (asked.value === "asking") asked.value = "silent";
  }, WAITS);
  navigator.geolocation?.watchPosition(place, () => {}, {
    enableHighAccuracy: true,
    maximumAge: 0,
  });
}

let [second, count] = [0, 0];

function feel({ accelerationIncludingGravity: force, rotationRate, timeStamp }: DeviceMotionEvent) {
  const three = [force?.x, force?.y, force?.z];
  const turn = [rotationRate?.alpha, rotationRate?.beta, rotationRate?.gamma];
  if (![...three, ...turn].every((one) => typeof one === "number")) return;
  const time = timeStamp / 1000;
  asked.value = "answering";
  countOne(time);
  const numbers = [...three, ...turn.map((one) => (one ?? 0) * DEGREE)] as number[];
  listener?.("felt", [time, ...numbers]);
}

function countOne(time: number): void {
  count += 1;
  if (time - second < 1) return;
  const rate = second === 0 ? 0 : Math.round(count / (time - second));
  [second, count] = [time, 0];
  if (rate !== heard.value.rate) heard.value = { ...heard.value, rate };
}

function place({ coords: { speed, heading } }: GeolocationPosition): void {
  if (speed === null) return;
  if (!heard.value.satellites) heard.value = { ...heard.value, satellites: true };
  const course = heading === null ? Number.NaN : heading * DEGREE;
  listener?.("fixes", [performance.now() / 1000, speed, course]); // as it comes: how late is found
}
