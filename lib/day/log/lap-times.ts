import { formatNumber } from "../../units.js";

const LEAST = 1;
const GREATEST = 10_000; // s

/** Lap times in seconds from a line of text, or the part of it that is none. */
export function readLaps(text: string): { laps: readonly number[] } | { fault: string } {
  const parts = text.split(/[\s;]+/).filter((part) => part !== "");
  const laps = parts.map(secondsIn);
  const wrong = laps.findIndex((lap) => !(lap >= LEAST && lap <= GREATEST));
  return wrong < 0 ? { laps } : { fault: parts[wrong] ?? "" };
}

/** Seconds, or minutes and seconds such as 1:21.4; a comma may stand for the point. */
function secondsIn(part: string): number {
  const [, minutes = "0", seconds] = /^(?:(\d+):)?(\d+(?:[.,]\d+)?)$/.exec(part) ?? [];
  return seconds === undefined
    ? Number.NaN
    : Number(minutes) * 60 + Number(seconds.replace(",", "."));
}

export const lapsText = (laps: readonly number[] = []): string =>
  laps.map((lap) => formatNumber(lap, 1)).join(" ");
