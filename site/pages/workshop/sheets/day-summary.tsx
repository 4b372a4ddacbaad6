import { comparedIn, measuredIn, runsWithReports, testedIn } from "@rollbook/lib";
import { reader } from "@rollbook/page";
import { useMemo } from "preact/hooks";
import { changeLabel } from "../../../say/change.js";
import { measured as said } from "../../../say/workshop/measured.js";
import { logNow } from "../../../store/log.js";
import { carTitle } from "../day/car-names.js";
import type { Draft } from "../day/draft.js";
import { filedDay } from "../day/reporter.js";
import { MeasuredTable } from "../parts/measured-table.js";
import { type OfDay, Paper } from "./paper.js";

/** The end of the day: each run against the one before, as it was felt, predicted and measured. */
export function DaySummary({ day }: OfDay) {
  const runs = useRuns(day);
  return (
    <Paper day={day} title={`${said.summary}: ${day.name}`}>
      {runs.length === 0 && <p>{said.summaryNone}</p>}
      {runs.map(({ run, car, changes, found, compared }) => (
        <section key={`${run} ${car}`} class="key">
          <h4>{said.run(run, carTitle(day, car) ?? "", changes.join("; "))}</h4>
          {changes.length > 1 && <p>{said.confounded}</p>}
          <MeasuredTable found={found} compared={compared} isOwn={false} />
        </section>
      ))}
      <p class="quiet">{said.own}</p>
    </Paper>
  );
}

/** Every run with a set-up before it, of which something was felt or measured. */
function useRuns({ others = [] }: Draft) {
  const [log, event] = [logNow.value, filedDay()];
  return useMemo(() => {
    if (event === undefined) return [];
    const cars = [1, ...others.map(({ carNumber }) => carNumber)];
    const last = Math.max(event.steps.length, ...runsWithReports(log, event), 0);
    const runs = Array.from({ length: Math.max(0, last - 1) }, (_, i) => i + 2);
    return runs.flatMap((run) =>
      cars.flatMap((car) => {
        const tested = testedIn(log, event, run, car);
        if (tested === undefined) return [];
        const [found, compared] = [
          measuredIn(log, event, run, car),
          comparedIn(log, event, run, car),
        ];
        if (found === undefined && compared.length === 0) return [];
        const changes = tested.changes.map((change) => changeLabel(change, tested.before, reader));
        return [{ run, car, changes, found, compared }];
      }),
    );
  }, [log, event, others]);
}
