import { ownWorker } from "@rollbook/page";
import { type Answer, type Ask, answerTo } from "./work.js";

let worker: Worker | undefined;
let jobs = 0;
const waiting = new Map<number, { readonly ask: Ask; readonly tell: (answer: Answer) => void }>();

/** Has a ride worked out by a worker; on the page itself where a browser starts none, as from a file. */
export function workedOut(ask: Ask): Promise<Answer> {
  return new Promise((tell) => {
    const job = ++jobs;
    waiting.set(job, { ask, tell });
    try {
      if (location.protocol === "file:") throw new Error("no workers from a file");
      worker ??= started();
      worker.postMessage({ job, ask });
    } catch {
      onThePage();
    }
  });
}

function started(): Worker {
  const one = ownWorker("ride-worker.js");
  one.onmessage = ({ data }: MessageEvent<{ job: number; answer: Answer }>) => {
    waiting.get(data.job)?.tell(data.answer);
    waiting.delete(data.job);
  };
  one.onerror = (event) => {
    event.preventDefault();
    worker = undefined;
    onThePage();
  };
  return one;
}

/** What still waits, a moment later, so that the page can say that it is at work. */
function onThePage(): void {
  const all = [...waiting.values()];
  waiting.clear();
  setTimeout(() => {
    for (const { ask, tell } of all) tell(answerTo(ask));
  });
}
