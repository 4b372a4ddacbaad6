import { type Round, runsOfDay } from "@rollbook/lib";
import type { Draft } from "../day/draft.js";
import { roundsOn } from "../day/worked.js";
import { words } from "../words.js";

const { plan } = words;

/** Who drives which car when, run by run. */
export function RotationTable({ day }: { readonly day: Draft }) {
  const runs = Array.from({ length: runsOfDay(day) }, (_, i) => roundsOn(day, i + 1));
  const most = Math.max(0, ...runs.map(({ length }) => length));
  return (
    <div class="table" role="region" tabIndex={0} aria-label={plan.rotation}>
      <table>
        <thead>
          <tr>
            <td />
            {Array.from({ length: most }, (_, i) => (
              <th key={i} scope="col">
                {plan.round(i + 1)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {runs.map((run, i) => (
            <tr key={i}>
              <th scope="row">{plan.run(i + 1)}</th>
              {run.map((round, j) => (
                <td key={j}>{roundInWords(round)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** Who is out and who watches. */
export function roundInWords({ stints, waiting }: Round): string {
  const out = stints.map(({ car, driver }) => plan.inCar(car, driver));
  return [...out, ...(waiting.length > 0 ? [plan.waiting(waiting.join(", "))] : [])].join("; ");
}
