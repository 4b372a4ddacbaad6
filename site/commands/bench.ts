import { readFileSync, writeFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { compared } from "../bench/beside/compare.js";
import { buildTimes } from "../bench/build-times.js";
import { keepTable } from "../bench/keep-table.js";
import { mapTimes } from "../bench/map-times.js";
import { pageTimes } from "../bench/page-times.js";
import { table } from "../bench/row.js";
import { solverTimes } from "../bench/solver.js";
import { inRoot } from "../build/paths.js";
import { ensureBenchmarkTools } from "./needs.js";
import { reportFaults } from "./report-faults.js";

const { values } = parseArgs({
  options: {
    write: { type: "boolean", default: false },
    beside: { type: "boolean", default: false },
  },
});

const measured = async (): Promise<string> =>
  table([...buildTimes(), ...solverTimes(), ...(await pageTimes()), ...(await mapTimes())]);

const marks = values.beside
  ? { opening: "<!-- beside -->", ending: "<!-- end beside -->" }
  : { opening: "<!-- measured -->", ending: "<!-- end -->" };

await reportFaults(async () => {
  ensureBenchmarkTools();
  const rows = values.beside ? await compared() : await measured();
  console.log(rows);
  if (!values.write) return;
  const path = inRoot("docs/performance.md");
  writeFileSync(path, keepTable(readFileSync(path, "utf8"), marks, rows));
});
