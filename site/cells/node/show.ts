import { liveOutput, runtimeOutput, stillOutput } from "./front-end/output.js";
import { followSession } from "./front-end/session.js";
import { hasFrontEnd, kernelDisplay } from "./kernel.js";

if (hasFrontEnd()) {
  const bring = () => kernelDisplay().html(runtimeOutput());
  followSession(bring);
  bring();
}

/** Hands what can live in the page, or in a front end, to whichever listens. */
export const showLive = (html: string): void =>
  kernelDisplay().html(hasFrontEnd() ? liveOutput(html) : html);

/** Hands on a result that does not move. */
export const showStill = (html: string): void =>
  kernelDisplay().html(hasFrontEnd() ? stillOutput(html) : html);
