import { type MapOf, mapError, readMap, type SetUpMap } from "@rollbook/lib";
import { element, format, spell } from "@rollbook/page";
import { readingText, resultText, settingsText } from "../tell.js";
import { words } from "../words.js";

/** What the map says: of the place under the mark, of the whole, of its own error. */
export function sentences() {
  const reading = element("p", { class: "says reading", role: "status", "aria-live": "off" });
  const result = element("p", { class: "says", role: "status" });
  const accuracy = element("p", { class: "hint" });
  return {
    reading,
    result,
    accuracy,
    /** Tells of the place under the mark; aloud where it was the mark that moved. */
    read(of: MapOf, { x, y }: { x: number; y: number }, aloud: boolean): void {
      reading.setAttribute("aria-live", aloud ? "polite" : "off");
      reading.textContent = spell(sentenceAt(of, x, y));
    },
    tell(of: MapOf, map: SetUpMap): void {
      result.textContent = spell(resultText(of, map, format));
      accuracy.textContent = words.blended(format("acceleration", roundedUp(mapError(of)), 3));
    },
    refuse(reason: string): void {
      result.textContent = words.notDrawn(reason);
    },
  };
}

/** To the next thousandth above, so that what is said holds. */
const roundedUp = (error: number): number => Math.ceil(Math.max(error, 1e-9) * 1000) / 1000;

function sentenceAt(of: MapOf, x: number, y: number): string {
  try {
    return readingText(of, readMap(of, x, y), format);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return words.cannot(settingsText(of.along, of.up, x, y, format), error.message);
  }
}
