import { element, fillFrame } from "@rollbook/page";
import { type Reply, replyFrom } from "../model/results.js";
import { relay, relayHash } from "./built.js";
import type { Question } from "./runtime.js";

/** Why a sandbox was taken away. */
export type Ending =
  | { readonly why: "silent"; readonly cell: number | undefined }
  | { readonly why: "unasked" }
  | { readonly why: "broken"; readonly message: string; readonly line: number }
  | { readonly why: "rested" }
  | { readonly why: "hidden" }
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

export const rest = 10_000; // ms without a question after which nothing runs on

const policy = `default-src 'none'; script-src '${relayHash}'; worker-src blob:`;
const frameText =
  `<!doctype html><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="${policy}">` +
  `<title>Sandbox</title><script>${relay}</script>`;

interface Pending {
  readonly resolve: (reply: Reply) => void;
  readonly reject: (reason: Ended) => void;
}

class FramedSandbox implements Sandbox {
  readonly #frame = element("iframe", { sandbox: "allow-scripts", hidden: true });
  #pending: Pending | undefined;
  #ended: Ending | undefined;
  #cell: number | undefined;
  #timer = 0;
  #last: Promise<unknown> = Promise.resolve();
  #comeUp: () => void = () => {};
  readonly #up = new Promise<void>((resolve) => {
    this.#comeUp = resolve;
  });

  constructor(
    private readonly script: string,
    private stepsLeft: number,
    private readonly whenEnded: (ending: Ending) => void,
  ) {
    addEventListener("message", this.#hear);
    document.addEventListener("visibilitychange", this.#look);
    fillFrame(this.#frame, frameText);
    document.body.append(this.#frame);
    this.#wait(toStart);
  }
  ask(question: Question): Promise<Reply> {
    const next = this.#last.then(() => this.#put(question));
    this.#last = next.catch(() => {});
    return next;
  }
  end(): void {
    this.#end({ why: "left" });
  }
  #end(ending: Ending): void {
    if (this.#ended) return;
    this.#ended = ending;
    clearTimeout(this.#timer);
    removeEventListener("message", this.#hear);
    document.removeEventListener("visibilitychange", this.#look);
    this.#frame.remove();
    this.#comeUp();
    this.whenEnded(ending);
    this.#pending?.reject(new Ended(ending));
  }
  #wait(milliseconds: number): void {
    this.#timed(milliseconds, { why: "silent", cell: this.#cell });
  }
  #timed(milliseconds: number, ending: Ending): void {
    clearTimeout(this.#timer);
    this.#timer = window.setTimeout(() => this.#end(ending), milliseconds);
  }
  #look = (): void => {
    if (document.hidden) this.#end({ why: "hidden" });
  };
  #answer(reply: Reply | undefined): void {
    const step = reply?.kind === "at";
    if (step) this.stepsLeft -= 1;
    if (!reply || !this.#pending || this.stepsLeft < 0) this.#end({ why: "unasked" });
    else if (step) {
      this.#cell = reply.cell;
      this.#wait(patience);
    } else {
      this.#timed(rest, { why: "rested" });
      this.#pending.resolve(reply);
      this.#pending = undefined;
    }
  }
  #hear = ({ source, data }: MessageEvent): void => {
    const { contentWindow } = this.#frame;
    if (source !== contentWindow) return;
    if (data.up) {
      contentWindow?.postMessage({ start: this.script }, "*");
      this.#comeUp();
    } else if (typeof data.failed === "string") {
      const message = data.failed.slice(0, 500);
      this.#end({ why: "broken", message, line: Number(data.line) });
    } else this.#answer(replyFrom(data.said));
  };
  async #put(question: Question): Promise<Reply> {
    await this.#up;
    if (this.#ended) throw new Ended(this.#ended);
    return new Promise((resolve, reject) => {
      this.#pending = { resolve, reject };
      this.#cell = question.kind === "draw" ? question.cell : undefined;
      if (question.kind === "draw") this.#wait(patience);
      this.#frame.contentWindow?.postMessage({ ask: question }, "*");
    });
  }
}

/**
 * Starts a script in a worker inside a frame without an origin.
 *
 * @param steps - how many cells it may announce
 * @param whenEnded - told once why it was taken away, with or without a question waiting
 */
export const openSandbox = (
  script: string,
  steps: number,
  whenEnded: (ending: Ending) => void,
): Sandbox => new FramedSandbox(script, steps, whenEnded);
