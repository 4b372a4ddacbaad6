import { trustedPolicy } from "../../cells/browser/trusted-policy.js";

/**
 * All that runs in the sandboxed frame itself: it starts a worker from the text that the page sends,
 * and hands messages on as they are. The worker inherits the frame's policy and its lack of an origin.
 */
let worker: Worker | undefined;

const policy = trustedPolicy("rollbook-sandbox", { createScriptURL: (address: string) => address });

const tell = (message: unknown): void => parent.postMessage(message, "*");

function start(script: string): Worker {
  const address = URL.createObjectURL(new Blob([script], { type: "text/javascript" }));
  const started = new Worker(policy.createScriptURL(address));
  started.onmessage = ({ data }) => tell({ said: typeof data === "string" ? data : "" });
  started.onerror = (event) => {
    event.preventDefault();
    tell({ failed: String(event.message), line: event.lineno });
  };
  return started;
}

addEventListener("message", ({ source, data }) => {
  if (source !== parent || self === parent) return;
  if (typeof data.start === "string") worker = start(data.start);
  else worker?.postMessage(data.ask);
});
if (self !== parent) tell({ up: true });
