import { driverRuns, expectations } from "@rollbook/lib";
import { talk as said } from "../../../say/workshop/talk.js";
import { words } from "../words.js";
import type { Topic } from "./topic.js";

/** What was expected of a run, counted, with reasons and without names. */
export function Predictions({ log, event, run, car, driver }: Topic) {
  const entries = driverRuns(log, event)
    .filter(
      (one) =>
        one.run === run && one.car === car && (driver === undefined || one.driver === driver),
    )
    .flatMap(({ predictions }) => predictions);
  if (entries.length === 0) return <p class="quiet">{said.noPredictions}</p>;
  return (
    <ul class="plain">
      {expectations.map((expects) => {
        const own = entries.filter((one) => one.expects === expects);
        return (
          <li key={expects}>
            {said.predicted(words.report.expects[expects], own.length)}
            <ul class="plain">
              {own.map(({ id, reason, confidence = "" }) => (
                <li key={id}>{said.reason(reason, confidence)}</li>
              ))}
            </ul>
          </li>
        );
      })}
    </ul>
  );
}
