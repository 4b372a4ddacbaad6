import { startCrew } from "./crew.js";
import { type Job, jobFor, type Wanted } from "./job.js";
import { workInSlices } from "./slices.js";

/** Works one map at a time out in full, beside the page where there are workers. */
interface Solver {
  /** Begins a map; whatever was under way is dropped. */
  begin(wanted: Wanted): void;
  drop(): void;
  readonly busy: boolean;
  /** Whether the page stays free meanwhile. */
  readonly beside: boolean;
}

export function mapSolver(file: string): Solver {
  let [job, wanted]: [Job | undefined, Wanted | undefined] = [undefined, undefined];
  let count = 0;
  let crew = startCrew(file, () => {
    crew = undefined;
    if (wanted) begin(wanted); // again, on the page itself
  });

  function begin(next: Wanted): void {
    const onDone: Wanted["onDone"] = (map) => {
      drop();
      next.onDone(map);
    };
    wanted = next;
    const started = jobFor({ ...next, onDone }, ++count);
    job = started;
    if (crew) crew.work(started, next.aside ? 1 : 0);
    else workInSlices(started, () => job === started);
  }
  function drop(): void {
    [job, wanted] = [undefined, undefined];
    crew?.rest();
  }
  return {
    begin,
    drop,
    get busy() {
      return job !== undefined;
    },
    get beside() {
      return crew !== undefined;
    },
  };
}
