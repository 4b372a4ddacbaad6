/** Works bands out beside the page: the latest ask is answered again and again, each time from more samples. */
import "../cells/browser/physics-in-worker.js";
import type { Answer, Ask } from "./ask.js";
import { sampleInSlices } from "./in-slices.js";

const slice = 40; // ms between two looks for a later ask
let latest = 0;

addEventListener("message", ({ data }: MessageEvent<Ask>) => {
  const { job } = data;
  latest = job;
  sampleInSlices(
    data,
    slice,
    () => latest === job,
    (bands) => {
      const answer: Answer = { job, ...bands };
      postMessage(answer);
    },
  );
});
