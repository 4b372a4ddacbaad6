import { cut, inShort } from "../../car/file/in-short.js";
import { type DriverRun, driverRuns, setUpNamedByRun, setUpOfRun } from "./driver-runs.js";
import type { EntryHead, EventEntry, Log, RunEntry } from "./log.js";
import { sameName } from "./same-name.js";
import { nowStandingFor } from "./standing.js";

/** Where a table's runs and drivers are looked up: the log, and the day whose runs have the numbers. */
export interface TableDay {
  readonly log: Log;
  readonly event?: EventEntry | undefined;
}

/** The run of a line and who drove it; with the run itself where the log does not have it yet. */
export type TableRun =
  | { readonly run: string; readonly driver: string; readonly made?: RunEntry }
  | { readonly fault: string };

type Head = Pick<EntryHead, "id" | "at">;

const ENTRY = /^[a-z0-9]+-[1-9][0-9]*$/;

/** Finds the runs that the lines of one table are about. */
export class TableRuns {
  readonly #day: TableDay;
  readonly #fresh: () => Head;
  readonly #made: RunEntry[] = [];
  #known: readonly DriverRun[] | undefined;

  constructor(day: TableDay, fresh: () => Head) {
    this.#day = day;
    this.#fresh = fresh;
  }

  /** @param run - the entry of the run, or its number in the day */
  find(run: string, driver: string): TableRun {
    if (ENTRY.test(run)) return this.#byEntry(run, driver);
    if (/^\d{1,9}$/.test(run)) return this.#byNumber(Number(run), driver);
    const must = 'must be the number of a run, such as 3, or its entry, such as "k3f9-12"';
    return { fault: `run is ${run === "" ? "empty" : inShort(run)} but ${must}.` };
  }

  #byEntry(run: string, driver: string): TableRun {
    const found = nowStandingFor(this.#day.log, "run", run);
    if (found === undefined)
      return { fault: `run is ${inShort(run)} but the log here has no such run.` };
    if (driver === "" || sameName(driver, found.driver)) return { run, driver: found.driver };
    const own = `${inShort(found.driver)}, who drove run ${run}`;
    return { fault: `driver is ${inShort(driver)} but must be ${own}, or left out.` };
  }

  #byNumber(number: number, driver: string): TableRun {
    const { log, event } = this.#day;
    if (event === undefined)
      return { fault: `run is ${number}, but no day is here that has a run of that number.` };
    const isIt = (one: { readonly driver: string; readonly number: number }) =>
      one.number === number && sameName(one.driver, driver);
    this.#known ??= driverRuns(log, event);
    const known = this.#known.find((one) => isIt({ driver: one.driver, number: one.run }));
    const [entry] = known?.entries ?? [];
    if (entry !== undefined) return { run: entry.id, driver: entry.driver };
    const made = this.#made.find((one) => isIt({ driver: one.driver, number: one.runNumber ?? 0 }));
    if (made !== undefined) return { run: made.id, driver: made.driver, made };
    return this.#planned(event, number, driver);
  }

  /** A run that the plan has and nobody has filed. */
  #planned(event: EventEntry, number: number, driver: string): TableRun {
    const name = event.drivers.find((one) => sameName(one, driver));
    if (name === undefined) {
      const is = driver.trim() === "" ? "empty" : inShort(driver);
      return {
        fault: `driver is ${is} but must be one of: ${cut(event.drivers.join(", "), 300)}.`,
      };
    }
    const most = event.steps.length;
    if (number < 1 || number > most)
      return { fault: `run is ${number} but must be from 1 to ${most}, the runs of the day.` };
    const made: RunEntry = {
      ...{ kind: "run", ...this.#fresh(), author: name },
      setUp: setUpOfRun(this.#day.log, event, number)?.id ?? setUpNamedByRun(number),
      ...{ driver: name, runNumber: number },
    };
    this.#made.push(made);
    return { run: made.id, driver: name, made };
  }
}
