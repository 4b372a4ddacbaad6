import { readFileSync, writeFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { buildTimes } from "../bench/build-times.js";
import { mapTimes } from "../bench/map-times.js";
import { pageTimes } from "../bench/page-times.js";
import { table } from "../bench/row.js";
import { inRoot } from "../build/paths.js";
import { ensureTestTools } from "./needs.js";
import { reportFaults } from "./report-faults.js";

const { values } = parseArgs({ options: { write: { type: "boolean", default: false } } });

/** Puts the table into docs/performance.md between its two marks. */
function keep(text: string): void {
  const path = inRoot("docs/performance.md");
  const marked = /(<!-- measured -->\n)[\s\S]*(\n<!-- end -->)/;
  writeFileSync(path, readFileSync(path, "utf8").replace(marked, `$1${text}$2`));
}

await reportFaults(async () => {
  ensureTestTools();
  const rows = table([...buildTimes(), ...(await pageTimes()), ...(await mapTimes())]);
  console.log(rows);
  if (values.write) keep(rows);
});
