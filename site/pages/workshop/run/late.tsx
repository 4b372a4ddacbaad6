import { endsNow, type Remedied, remediesFor } from "@rollbook/lib";
import { Button } from "../../../ui/button.js";
import { say } from "../../../ui/notice.js";
import type { Draft } from "../day/draft.js";
import { change, fileDay } from "../day/open-day.js";
import { words } from "../words.js";
import { type AtHand, readingOf } from "./state.js";

const { happen: said } = words;

/** Minutes over the end that are not worth a change of plan. */
const NOTICED = 2;

/** Where the day will be over too late: three ways to be over in time, each with its new end. */
export function Late({ at }: { readonly at: AtHand }) {
  const behind = readingOf(at).behind ?? 0;
  const now = { run: at.row.run, behind: Math.max(0, Math.round(behind)) };
  const ends = endsNow(at.rows, now);
  const over = Math.round(ends - at.day.minutes);
  if (over < NOTICED) return null;
  const remedies = remediesFor(at.day, at.rows, now);
  return (
    <div class="late" id="late">
      <p class="beware">{said.late(now.behind, words.hours(ends), over)}</p>
      {remedies.length > 0 && <p class="quiet">{said.remedies}</p>}
      <ul class="plain">
        {remedies.map((one) => (
          <li key={one.remedy}>
            <Button id={`remedy-${one.remedy.replaceAll(" ", "-")}`} work={() => apply(at, one)}>
              {said.remedy(one)}
            </Button>{" "}
            {said.ends(words.hours(one.ends), one.inTime)}
          </li>
        ))}
      </ul>
    </div>
  );
}

function apply({ day }: AtHand, one: Remedied): void {
  change(one.day as Draft); // the open day with other runs
  fileDay();
  say(said.remedied(said.remedy(one), words.hours(one.ends)), () => {
    change(day);
    fileDay();
  });
}
