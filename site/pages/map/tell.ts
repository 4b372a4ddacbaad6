import {
  type Banded,
  type BandedPhase,
  type CarBalance,
  carOnMap,
  hardestOn,
  hasLimits,
  type MapAxis,
  type MapOf,
  type MapReading,
  type Margin,
  type MarginBand,
  type PhaseName,
  parameters,
  type Quantity,
  type SetUpMap,
  tipsNear,
} from "@rollbook/lib";
import { brokenBy } from "../../say/class-rules.js";
import { digitsFor } from "../../say/digits.js";
import { words } from "../../say/map.js";
import { surerWords } from "../../say/surer.js";
import { drawnOf } from "./drawn.js";
import { rangeOf } from "./levels.js";

/** An SI value as text in the reader's unit. */
type Format = (quantity: Quantity, value: number, decimals: number) => string;

const decimals = 2; // of an acceleration in m/s²

export const acceleration = (value: number, format: Format): string =>
  format("acceleration", value, decimals);

/** "front spring rate 65 N/mm". */
function settingOf({ name, parameter }: MapAxis, value: number, format: Format): string {
  const { quantity, decimals } = parameters[parameter];
  return words.setting(name.toLowerCase(), format(quantity, value, decimals));
}

/** Both settings of a place. */
export function settingsText(along: MapAxis, up: MapAxis, x: number, y: number, format: Format) {
  return `${settingOf(along, x, format)}, ${settingOf(up, y, format)}`;
}

/** The same with no more digits than its band has, where that is known. */
const within = (value: number, sure: Banded | undefined, format: Format): string =>
  format("acceleration", value, sure ? digitsFor(sure.band, "acceleration", decimals) : decimals);

/** Between what the margin of one part of a corner lies, and how sure it is which end gives up first. */
export function sureText(part: PhaseName, { understeerMargin, tips }: MarginBand, format: Format) {
  const name = words.parts[part];
  if (tips > 0.5) return surerWords.tips(name);
  const { band, sign } = understeerMargin;
  const [low, high] = [band.low, band.high].map(({ value }) =>
    within(value, understeerMargin, format),
  );
  return surerWords.margin(name, low ?? "", high ?? "", surerWords.verdicts[sign.verdict]);
}

/**
 * What is to be read at one place, in one sentence.
 *
 * @param sure - bands of it, once they are known
 */
export function readingText(
  of: MapOf,
  reading: MapReading,
  format: Format,
  sure?: BandedPhase,
): string {
  const { along, up } = of;
  const { x, y, balance, broken } = reading;
  const here = x === along.present && y === up.present ? words.isCar : "";
  const settings = capital(settingsText(along, up, x, y, format)) + here;
  const { first, understeerMargin, lateralAcceleration, lifted, tips } = balance;
  const turn = within(lateralAcceleration, sure?.lateralAcceleration, format);
  const rest = easedText(balance, format) + outsideText(broken, format);
  if (tips) return words.tipsOver(settings, turn, rest);
  const margin = within(Math.abs(understeerMargin), sure?.understeerMargin, format);
  const ahead = first === "both" ? words.ahead.both : words.ahead[first](margin);
  const ends = (["front", "rear"] as const).filter((end) => lifted[end]);
  const wheels = ends.map(words.lifts).join("");
  const near = nearTippingOf(of, reading);
  const tipping = near === undefined ? "" : words.nearTipping(acceleration(near, format));
  return words.reading(settings, ahead, turn + wheels + tipping, rest);
}

/** Where the car of a place tips over, m/s², if its hardest turn comes near to that. */
export function nearTippingOf(of: MapOf, { x, y, balance }: MapReading): number | undefined {
  return tipsNear(carOnMap(of, x, y).handling, of.driving, balance);
}

/** What it says where the car cannot brake or drive as hard as that part of a corner asks. */
function easedText({ given, longitudinalAcceleration }: CarBalance, format: Format): string {
  if (given) return "";
  const able = format("acceleration", Math.abs(longitudinalAcceleration), 1);
  return longitudinalAcceleration < 0 ? words.brakesLess(able) : words.drivesLess(able);
}

function outsideText(broken: readonly Margin[], format: Format): string {
  if (broken.length === 0) return "";
  return words.outside(broken.map((margin) => brokenBy(margin, format)).join(", "));
}

/** Balance as text that names its side: "0.12 m/s² of understeer". */
function sided(margin: number, format: Format): string {
  const size = acceleration(Math.abs(margin), format);
  return margin < 0 ? words.oversteers(size) : words.understeers(size);
}

/** The whole map in one sentence: how far balance and grip go, and where grip is greatest. */
export function resultText(of: MapOf, map: SetUpMap, format: Format): string {
  const balance = rangeOf(drawnOf(map, map.understeerMargin));
  const grip = rangeOf(drawnOf(map, map.lateralAcceleration));
  if (balance.least > balance.most) return words.nothing;
  return words.result(
    sided(balance.least, format),
    sided(balance.most, format),
    acceleration(grip.least, format),
    acceleration(grip.most, format),
    hardestText(of, map, format),
  );
}

function hardestText(of: MapOf, map: SetUpMap, format: Format): string {
  const at = hardestOn(of, map);
  if (at === undefined) return words.nowhere;
  const settings = settingsText(of.along, of.up, at.x, at.y, format);
  return hasLimits(map) ? words.inside(settings) : words.anywhere(settings);
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
