/** Works rows of a map out beside the page: one row an ask, one map of that row an answer. */
import "../../cells/browser/physics-in-worker.js";
import { exactRow } from "@rollbook/lib";
import type { RowAnswer, RowAsk } from "./solve/row-ask.js";

addEventListener("message", ({ data }: MessageEvent<RowAsk>) => {
  const { job, of, grid, row } = data;
  const answer: RowAnswer = { job, row, worked: exactRow(of, grid, row) };
  postMessage(answer);
});
