import { MAP_ERROR_ALLOWED, type MapOf, Refusal, readMap } from "@rollbook/lib";
import { format, reader, spell } from "@rollbook/page";
import { words } from "../../../say/map.js";
import { refusalInWords } from "../../../say/refusal.js";
import type { Exactness, LiveMap } from "../live.js";
import { axesIn, markOf } from "../state.js";
import { acceleration, readingText, resultText, settingsText } from "../tell.js";

/** How near the drawn map is to one that is worked out in full. */
export function HowExact({ live }: { readonly live: LiveMap }) {
  const now = live.exactness.value;
  return <p class="hint exactness">{now && exactnessText(now)}</p>;
}

/** What stands under the mark; aloud where it was the mark that moved. */
export function Reading({ live }: { readonly live: LiveMap }) {
  const of = live.of.value;
  const { along, up } = axesIn(live.state.value, live.axes);
  const { x, y } = markOf(live.state.value, along, up);
  return (
    <p class="says reading" role="status" aria-live={live.aloud.value ? "polite" : "off"}>
      {of && spell(sentenceAt(of, x, y))}
    </p>
  );
}

/** What the whole map says, or why there is none. */
export function Result({ live }: { readonly live: LiveMap }) {
  const refused = live.refused.value;
  const exact = live.exact.value;
  const text =
    refused !== undefined
      ? words.notDrawn(refused)
      : exact === undefined
        ? words.working
        : resultText(exact.of, exact.map, format);
  return (
    <p class="says" role="status">
      {spell(text)}
    </p>
  );
}

function sentenceAt(of: MapOf, x: number, y: number): string {
  try {
    return readingText(of, readMap(of, x, y), format);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return words.cannot(settingsText(of.along, of.up, x, y, format), refusalInWords(error, reader));
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
