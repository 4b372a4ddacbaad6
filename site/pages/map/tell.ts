import {
  type MapAxis,
  type MapReading,
  type Margin,
  parameters,
  type Quantity,
  type SetUpMap,
  settable,
  valueAt,
} from "@rollbook/lib";
import { rangeOf } from "./levels.js";
import { words } from "./words.js";

/** An SI value as text in the reader's unit. */
export type Format = (quantity: Quantity, value: number, decimals: number) => string;

const decimals = 2; // of an acceleration in m/s²

export const acceleration = (value: number, format: Format): string =>
  format("acceleration", value, decimals);

/** "front spring rate 65 N/mm". */
export function settingOf({ name, parameter }: MapAxis, value: number, format: Format): string {
  const { quantity, decimals } = parameters[parameter];
  return words.setting(name.toLowerCase(), format(quantity, value, decimals));
}

/** Both settings of a place. */
export function settingsOf(along: MapAxis, up: MapAxis, x: number, y: number, format: Format) {
  return `${settingOf(along, x, format)}, ${settingOf(up, y, format)}`;
}

/** What is to be read at one place, in one sentence. */
export function readingText(
  { x, y, balance, broken }: MapReading,
  along: MapAxis,
  up: MapAxis,
  format: Format,
): string {
  const here = x === along.present && y === up.present ? words.isCar : "";
  const { first, understeerMargin, lateralAcceleration, lifted, tips } = balance;
  const margin = acceleration(Math.abs(understeerMargin), format);
  const ahead = first === "both" ? words.ahead.both : words.ahead[first](margin);
  const ends = (["front", "rear"] as const).filter((end) => lifted[end]);
  const wheels = tips ? words.tips : ends.map(words.lifts).join("");
  return words.reading(
    capital(settingsOf(along, up, x, y, format)) + here,
    ahead,
    acceleration(lateralAcceleration, format) + wheels,
    outsideText(broken),
  );
}

function outsideText(broken: readonly Margin[]): string {
  if (broken.length === 0) return "";
  const parts = broken.map(({ parameter, where }) =>
    words.outsideOne(parameters[parameter].name.toLowerCase(), where),
  );
  return words.outside(parts.join(", "));
}

/** Balance as text that names its side: "0.12 m/s² of understeer". */
function sided(margin: number, format: Format): string {
  const size = acceleration(Math.abs(margin), format);
  return margin < 0 ? words.oversteers(size) : words.understeers(size);
}

/** The whole map in one sentence: how far balance and grip go, and where grip is greatest. */
export function resultText(map: SetUpMap, along: MapAxis, up: MapAxis, format: Format): string {
  const balance = rangeOf(map.understeerMargin);
  const grip = rangeOf(map.lateralAcceleration);
  const at = hardest(map);
  return words.result(
    sided(balance.least, format),
    sided(balance.most, format),
    acceleration(grip.least, format),
    acceleration(grip.most, format),
    at === undefined ? words.nowhere : hardestText(map, at, along, up, format),
  );
}

function hardestText(map: SetUpMap, at: number, along: MapAxis, up: MapAxis, format: Format) {
  const place = (index: number, count: number) => index / Math.max(1, count - 1);
  const x = valueAt(along, place(at % map.columns, map.columns));
  const y = valueAt(up, place(Math.floor(at / map.columns), map.rows));
  const settings = settingsOf(along, up, settable(along, x), settable(up, y), format);
  return map.room.length > 0 ? words.inside(settings) : words.anywhere(settings);
}

/** Index of the place within the limits where the car turns hardest. */
function hardest({ lateralAcceleration, room }: SetUpMap): number | undefined {
  let best: number | undefined;
  lateralAcceleration.forEach((turn, i) => {
    if ((room[i] ?? 0) < 0) return;
    if (best === undefined || turn > (lateralAcceleration[best] ?? 0)) best = i;
  });
  return best;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
