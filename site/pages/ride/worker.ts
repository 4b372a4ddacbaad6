/** Works rides out beside the page. */
import "../../cells/browser/physics-in-worker.js";
import { type Ask, answerTo } from "./work/work.js";

addEventListener("message", ({ data }: MessageEvent<{ job: number; ask: Ask }>) => {
  postMessage({ job: data.job, answer: answerTo(data.ask) });
});
