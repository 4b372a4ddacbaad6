import { trustedPolicy } from "../cells/browser/trusted-policy.js";
import type { Sign } from "./sign.js";
import { words } from "./words.js";

/** Whether the worker, once done, holds the whole course. */
function holdsAll(worker: ServiceWorker): Promise<boolean> {
  return new Promise((resolve) => {
    const look = () => {
      if (worker.state === "redundant") resolve(false);
      else if (worker.state !== "installing") resolve(true);
    };
    worker.addEventListener("statechange", look);
    look();
  });
}

const wanted = 5e6;

async function whyNot(): Promise<string> {
  const { quota = Infinity, usage = 0 } = (await navigator.storage?.estimate()) ?? {};
  return quota - usage < wanted ? words.noRoom : words.notAll;
}

/** Says what this device holds; a newer course is shown only when the reader asks for it. */
function tell({ waiting, active }: ServiceWorkerRegistration, sign: Sign): void {
  if (waiting && active) sign.offer(() => waiting.postMessage("show"));
  else if (active) sign.say(words.ready);
}

async function follow(
  workers: ServiceWorkerContainer,
  registration: ServiceWorkerRegistration,
  sign: Sign,
): Promise<void> {
  const { installing, active } = registration;
  if (!active) sign.say(words.gettingReady);
  if (installing && !(await holdsAll(installing))) {
    if (!active) sign.say(words.notReady(await whyNot()));
    return;
  }
  tell(await workers.ready, sign);
}

/** A page that was answered by one course and is now answered by another must be loaded again. */
function watchRenewal(workers: ServiceWorkerContainer, sign: Sign): void {
  let answered = workers.controller !== null;
  workers.addEventListener("controllerchange", () => {
    if (answered && sign.asked) location.reload();
    else if (answered) sign.say(words.renewed);
    answered = true;
  });
}

/** Where Trusted Types are known, an address that this script made and no other. */
const workerAddress = trustedPolicy("rollbook-offline", {
  createScriptURL: (_: string) => "sw.js",
}).createScriptURL("");

/** Keeps the course on this device and says so at the foot of the page. */
export async function keepCourse(workers: ServiceWorkerContainer, sign: Sign): Promise<void> {
  watchRenewal(workers, sign);
  try {
    const registration = await workers.register(workerAddress);
    const look = () => follow(workers, registration, sign);
    registration.addEventListener("updatefound", look);
    await look();
  } catch (error) {
    const refused = (error as DOMException).name === "SecurityError";
    sign.say(refused ? words.cannot : words.notReady(words.notAll));
  }
}
