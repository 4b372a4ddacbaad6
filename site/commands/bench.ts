import { readFileSync, writeFileSync } from "node:fs";
import { compared } from "../bench/beside/compare.js";
import { buildTimes, primerWeight } from "../bench/build-times.js";
import { calibration } from "../bench/calibration.js";
import { keepTable } from "../bench/keep-table.js";
import { livingTimes } from "../bench/living-times.js";
import { mapTimes } from "../bench/map-times.js";
import { paddockLoad } from "../bench/paddock-load.js";
import { pageTimes } from "../bench/page-times.js";
import { type Row, table } from "../bench/row.js";
import { solverTimes } from "../bench/solver.js";
import { toolPageTimes } from "../bench/tool-page-times.js";
import { inRoot } from "../build/paths.js";
import { ensureBenchmarkTools } from "./needs.js";
import { reportFaults } from "./report-faults.js";
import { optionsOf, UsageError } from "./usage.js";

const usage = `Usage: npm run bench -- --write

  --only      one part of the table: builds, model, pages, living, map, paddock
  --beside    measure beside a general-purpose tool
  --write     keep the table in docs/performance.md`;

const options = () =>
  optionsOf({
    options: {
      write: { type: "boolean", default: false },
      only: { type: "string", default: "" },
      beside: { type: "boolean", default: false },
      help: { type: "boolean", default: false },
    },
  });

/** Parts of the table in their order; what comes first builds what the others look at. */
const parts = {
  builds: async () => [...(await buildTimes()), ...primerWeight()],
  model: solverTimes,
  pages: async () => [...(await pageTimes()), ...(await toolPageTimes())],
  living: livingTimes,
  map: mapTimes,
  paddock: paddockLoad,
} satisfies Record<string, () => Row[] | Promise<Row[]>>;

type Part = keyof typeof parts;
const names = Object.keys(parts) as Part[];

function partsAsked(only: string, write: boolean): readonly Part[] {
  if (only === "") return names;
  const part = names.find((name) => name === only);
  if (part === undefined) throw new UsageError(`--only is ${only}; it may be ${names.join(", ")}.`);
  if (write) throw new UsageError("--write keeps the whole table; leave --only out.");
  return [part];
}

async function measured(asked: readonly Part[]): Promise<string> {
  const rows = [...calibration("before")];
  for (const part of asked) {
    const began = performance.now();
    rows.push(...(await parts[part]()));
    console.error(`${part}: ${((performance.now() - began) / 1000).toFixed(0)} s`);
  }
  return table([...rows, ...calibration("after")]);
}

const marksOf = (beside: boolean) =>
  beside
    ? { opening: "<!-- beside -->", ending: "<!-- end beside -->" }
    : { opening: "<!-- measured -->", ending: "<!-- end -->" };

await reportFaults(async () => {
  const { values } = options();
  if (values.help) return console.log(usage);
  ensureBenchmarkTools();
  const asked = partsAsked(values.only, values.write);
  const rows = values.beside ? await compared() : await measured(asked);
  console.log(rows);
  if (!values.write) return;
  const path = inRoot("docs/performance.md");
  writeFileSync(path, keepTable(readFileSync(path, "utf8"), marksOf(values.beside), rows));
});
