import { readFileSync, writeFileSync } from "node:fs";
import { compared } from "../bench/beside/compare.js";
import { buildTimes } from "../bench/build-times.js";
import { keepTable } from "../bench/keep-table.js";
import { livingTimes } from "../bench/living-times.js";
import { mapTimes } from "../bench/map-times.js";
import { paddockLoad } from "../bench/paddock-load.js";
import { pageTimes } from "../bench/page-times.js";
import { table } from "../bench/row.js";
import { solverTimes } from "../bench/solver.js";
import { inRoot } from "../build/paths.js";
import { ensureBenchmarkTools } from "./needs.js";
import { reportFaults } from "./report-faults.js";
import { optionsOf } from "./usage.js";

const usage = `Usage: npm run bench -- --write

  --beside    measure beside a general-purpose tool
  --write     keep the table in docs/performance.md`;

const asked = () =>
  optionsOf({
    options: {
      write: { type: "boolean", default: false },
      beside: { type: "boolean", default: false },
      help: { type: "boolean", default: false },
    },
  });

const measured = async (): Promise<string> =>
  table([
    ...buildTimes(),
    ...solverTimes(),
    ...(await pageTimes()),
    ...(await livingTimes()),
    ...(await mapTimes()),
    ...(await paddockLoad()),
  ]);

const marksOf = (beside: boolean) =>
  beside
    ? { opening: "<!-- beside -->", ending: "<!-- end beside -->" }
    : { opening: "<!-- measured -->", ending: "<!-- end -->" };

await reportFaults(async () => {
  const { values } = asked();
  if (values.help) return console.log(usage);
  ensureBenchmarkTools();
  const rows = values.beside ? await compared() : await measured();
  console.log(rows);
  if (!values.write) return;
  const path = inRoot("docs/performance.md");
  writeFileSync(path, keepTable(readFileSync(path, "utf8"), marksOf(values.beside), rows));
});
