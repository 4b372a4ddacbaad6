/** Lap times that a run has room for. */
export const MOST_LAPS = 500;

const LEAST = 1;
const GREATEST = 10_000; // s

/** Lap times in seconds from a line of text, the part of it that is none, or how many are too many. */
export function readLaps(
  text: string,
): { laps: readonly number[] } | { fault: string } | { tooMany: number } {
  const parts = text.split(/[\s;]+/).filter((part) => part !== "");
  const laps = parts.map(secondsIn);
  const wrong = laps.findIndex((lap) => !(lap >= LEAST && lap <= GREATEST));
  if (wrong >= 0) return { fault: parts[wrong] ?? "" };
  return laps.length > MOST_LAPS ? { tooMany: laps.length } : { laps };
}

/** Seconds, or minutes and seconds such as 1:21.4; a comma may stand for the point. */
function secondsIn(part: string): number {
  const [, minutes = "0", seconds] = /^(?:(\d+):)?(\d+(?:[.,]\d+)?)$/.exec(part) ?? [];
  return seconds === undefined
    ? Number.NaN
    : Number(minutes) * 60 + Number(seconds.replace(",", "."));
}

export const lapsText = (laps: readonly number[] = []): string =>
  laps.map((lap) => lap.toFixed(1)).join(" ");
