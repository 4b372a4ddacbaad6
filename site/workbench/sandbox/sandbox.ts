import { element } from "@rollbook/page";
import { type Reply, replyFrom } from "../model/results.js";
import { relay, relayHash } from "./built.js";
import type { Question } from "./runtime.js";

/** Why a sandbox was taken away. */
export type Ending =
  | { readonly why: "silent"; readonly cell: number | undefined }
  | { readonly why: "unasked" }
  | { readonly why: "broken"; readonly message: string; readonly line: number }
  | { readonly why: "left" };

export class Ended extends Error {
  constructor(readonly ending: Ending) {
    super(ending.why);
  }
}

/** Edited cells where they reach neither page nor storage nor network. */
export interface Sandbox {
  /** One question at a time; rejected with `Ended` when the sandbox had to be taken away. */
  ask(question: Question): Promise<Reply>;
  end(): void;
}

const toStart = 10_000; // ms, for a slow phone to read the physics
export const patience = 2_000; // ms between two signs of life

const policy = `default-src 'none'; script-src '${relayHash}'; worker-src blob:`;
const frameText =
  `<!doctype html><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="${policy}">` +
  `<title>Sandbox</title><script>${relay}</script>`;

interface Pending {
  readonly resolve: (reply: Reply) => void;
  readonly reject: (reason: Ended) => void;
}

/**
 * Starts a script in a worker inside a frame without an origin.
 *
 * @param steps - how many cells it may announce
 * @param whenEnded - told once why it was taken away, with or without a question waiting
 */
export function openSandbox(
  script: string,
  steps: number,
  whenEnded: (ending: Ending) => void,
): Sandbox {
  const frame = element("iframe", { sandbox: "allow-scripts", hidden: true, srcdoc: frameText });
  let pending: Pending | undefined;
  let ended: Ending | undefined;
  let cell: number | undefined;
  let stepsLeft = steps;
  let timer = 0;
  let comeUp: () => void = () => {};
  const up = new Promise<void>((resolve) => {
    comeUp = resolve;
  });

  function end(ending: Ending): void {
    if (ended) return;
    ended = ending;
    clearTimeout(timer);
    removeEventListener("message", hear);
    frame.remove();
    comeUp();
    whenEnded(ending);
    pending?.reject(new Ended(ending));
  }
  function wait(milliseconds: number): void {
    clearTimeout(timer);
    timer = window.setTimeout(() => end({ why: "silent", cell }), milliseconds);
  }
  function answer(reply: Reply | undefined): void {
    const step = reply?.kind === "at";
    if (step) stepsLeft -= 1;
    if (!reply || !pending || stepsLeft < 0) end({ why: "unasked" });
    else if (step) {
      cell = reply.cell;
      wait(patience);
    } else {
      clearTimeout(timer);
      pending.resolve(reply);
      pending = undefined;
    }
  }
  function hear({ source, data }: MessageEvent): void {
    if (source !== frame.contentWindow) return;
    if (data.up) {
      frame.contentWindow?.postMessage({ start: script }, "*");
      comeUp();
    } else if (typeof data.failed === "string")
      end({ why: "broken", message: data.failed.slice(0, 500), line: Number(data.line) });
    else answer(replyFrom(data.said));
  }
  addEventListener("message", hear);
  document.body.append(frame);
  wait(toStart);

  async function ask(question: Question): Promise<Reply> {
    await up;
    if (ended) throw new Ended(ended);
    return new Promise((resolve, reject) => {
      pending = { resolve, reject };
      cell = question.kind === "draw" ? question.cell : undefined;
      if (question.kind === "draw") wait(patience);
      frame.contentWindow?.postMessage({ ask: question }, "*");
    });
  }
  let last: Promise<unknown> = Promise.resolve();
  return {
    ask(question) {
      const next = last.then(() => ask(question));
      last = next.catch(() => {});
      return next;
    },
    end: () => end({ why: "left" }),
  };
}
