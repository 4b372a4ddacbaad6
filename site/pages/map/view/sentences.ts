import { MAP_ERROR_ALLOWED, type MapOf, Refusal, readMap, type SetUpMap } from "@rollbook/lib";
import { element, format, spell } from "@rollbook/page";
import { acceleration, readingText, resultText, settingsText } from "../tell.js";
import { words } from "../words.js";

/** How near the drawn map is to one that is worked out in full; an error in m/s². */
export type Exactness =
  | { readonly kind: "exact" }
  | { readonly kind: "moving" | "working"; readonly error: number };

/** What the map says: of the place under the mark, of the whole, of its own error. */
export function sentences() {
  const reading = element("p", { class: "says reading", role: "status", "aria-live": "off" });
  const result = element("p", { class: "says", role: "status" });
  const exactness = element("p", { class: "hint exactness" });
  return {
    reading,
    result,
    exactness,
    /** Tells of the place under the mark; aloud where it was the mark that moved. */
    read(of: MapOf, { x, y }: { x: number; y: number }, aloud: boolean): void {
      reading.setAttribute("aria-live", aloud ? "polite" : "off");
      reading.textContent = spell(sentenceAt(of, x, y));
    },
    tell(of: MapOf, map: SetUpMap): void {
      result.textContent = spell(resultText(of, map, format));
    },
    wait(): void {
      result.textContent = words.working;
    },
    refuse(reason: string): void {
      result.textContent = words.notDrawn(reason);
      exactness.textContent = "";
    },
    howExact(now: Exactness): void {
      exactness.textContent = exactnessText(now);
    },
  };
}

function sentenceAt(of: MapOf, x: number, y: number): string {
  try {
    return readingText(of, readMap(of, x, y), format);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return words.cannot(settingsText(of.along, of.up, x, y, format), error.message);
  }
}

function exactnessText(now: Exactness): string {
  if (now.kind === "exact") return words.exactness.exact;
  const error = acceleration(roundedUp(now.error), format);
  if (now.error <= MAP_ERROR_ALLOWED) return words.exactness[now.kind](error);
  const allowed = acceleration(MAP_ERROR_ALLOWED, format);
  return words.exactness[`${now.kind}Beyond`](error, allowed);
}

/** To the next hundredth above, so that what is said holds. */
const roundedUp = (error: number): number => Math.ceil(Math.max(error, 1e-9) * 100) / 100;
