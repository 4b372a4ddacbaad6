import { documentOf } from "@rollbook/page";

const letters = "abcdefghijkmnpqrstuvwxyz23456789";

function random(length: number): string {
  const numbers = crypto.getRandomValues(new Uint8Array(length));
  return [...numbers].map((number) => letters[number % letters.length]).join("");
}

const kept = documentOf({
  key: "device",
  empty: "",
  read: (name) => (typeof name === "string" && /^[a-z0-9]{4}$/.test(name) ? name : undefined),
});
if (kept.now.value === "") void kept.set(random(4));

/** Four letters of this device. */
export const deviceName: string = kept.now.value;

/** The front of every id of this visit: the device's letters and four more, so that two open pages never write one id. */
export const visitName: string = deviceName + random(4);
