import { reportLine } from "../../../say/workshop/report-line.js";
import { Button } from "../../../ui/button.js";
import { driverRun } from "../day/reporter.js";
import { whereIs } from "../paddock/say-filed.js";
import { withdraw } from "../parts/withdraw.js";
import { words } from "../words.js";
import { reporting } from "./state.js";

const { report: said } = words;

/** What this driver filed in this run; nobody else's. */
export function FiledReports() {
  const { driver, run } = reporting.now.value;
  const reports = driverRun(driver, run)?.reports ?? [];
  if (reports.length === 0) return null;
  return (
    <>
      <h3>{said.yours}</h3>
      <ul class="filed">
        {reports.map((entry, i) => {
          const text = reportLine(entry);
          return (
            <li key={entry.id}>
              <span>
                {text} <small class="quiet">{whereIs(entry.id)}</small>
              </span>
              <Button
                id={`withdraw-${i}`}
                work={() => withdraw(entry.id, said.withdrawReason, said.withdrawn)}
                aria-label={`${said.withdraw}: ${text}`}
              >
                {said.withdraw}
              </Button>
            </li>
          );
        })}
      </ul>
    </>
  );
}
