import { keep, recall } from "@rollbook/page";

const letters = "abcdefghijkmnpqrstuvwxyz23456789";

function random(length: number): string {
  const numbers = crypto.getRandomValues(new Uint8Array(length));
  return [...numbers].map((number) => letters[number % letters.length]).join("");
}

const asName = (value: unknown) =>
  typeof value === "string" && /^[a-z0-9]{4}$/.test(value) ? value : undefined;

function named(): string {
  const known = recall("device", asName);
  if (known !== undefined) return known;
  const fresh = random(4);
  keep("device", fresh);
  return fresh;
}

/** Four letters of this device. */
export const deviceName: string = named();

/** The front of every id of this visit: the device's letters and four more, so that two open pages never write one id. */
export const visitName: string = deviceName + random(4);
