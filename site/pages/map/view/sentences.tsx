import {
  type BandedPhase,
  carOnMap,
  MAP_ERROR_ALLOWED,
  type MapOf,
  orUndefined,
  Refusal,
  readMap,
  USUAL_SPEED,
} from "@rollbook/lib";
import { format, reader, spell } from "@rollbook/page";
import { useMemo } from "preact/hooks";
import type { BandsOf } from "../../../bands/bands.js";
import { Surer, useSure } from "../../../bands/surer.js";
import { words } from "../../../say/map.js";
import { refusalInWords } from "../../../say/refusal.js";
import type { Exactness, LiveMap } from "../live.js";
import { axesIn, markOf } from "../state.js";
import { acceleration, readingText, resultText, settingsText, sureText } from "../tell.js";

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
  const asked = useMemo(() => of && askAt(of, x, y), [of, x, y]);
  const bands = useSure(asked);
  const sure = bands?.margins[live.state.value.phase];
  return (
    <>
      <p class="says reading" role="status" aria-live={live.aloud.value ? "polite" : "off"}>
        {of && spell(sentenceAt(of, x, y, sure))}
      </p>
      {asked && (
        <Surer id="map-sure" of={asked}>
          {sure && <p>{sureText(live.state.value.phase, sure, format)}</p>}
        </Surer>
      )}
    </>
  );
}

/** What is to be sampled of a place; nothing where the car cannot stand so. */
function askAt(of: MapOf, x: number, y: number): BandsOf | undefined {
  const at = orUndefined(() => {
    const standing = carOnMap(of, x, y);
    return standing.handling && standing;
  });
  return (
    at && {
      car: at.car,
      measured: at.measured,
      speed: of.driving.speed ?? USUAL_SPEED,
      changes: [],
    }
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

function sentenceAt(of: MapOf, x: number, y: number, sure: BandedPhase | undefined): string {
  try {
    return readingText(of, readMap(of, x, y), format, sure);
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
