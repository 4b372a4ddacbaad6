import { type Round, rotation } from "@rollbook/lib";
import type { Draft } from "../day/draft.js";
import { words } from "../words.js";

const { plan } = words;

/** Who drives which car when, run by run. */
export function RotationTable({ drivers, cars, steps }: Pick<Draft, "drivers" | "cars" | "steps">) {
  const runs = steps.map((_, i) => rotation(drivers, cars, i + 1));
  return (
    <div class="table" role="region" tabIndex={0} aria-label={plan.rotation}>
      <table>
        <thead>
          <tr>
            <td />
            {runs[0]?.map((_, i) => (
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
