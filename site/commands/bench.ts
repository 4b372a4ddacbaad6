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

  --only      one part: builds, model, pages, living, map, paddock
  --beside    measure beside two general-purpose tools
  --write     keep the tables in docs/performance.md, each as soon as it is there`;

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

function partsAsked(only: string): readonly Part[] {
  if (only === "") return names;
  const part = names.find((name) => name === only);
  if (part === undefined) throw new UsageError(`--only is ${only}; it may be ${names.join(", ")}.`);
  return [part];
}

async function measured(part: Part): Promise<string> {
  const before = calibration("before");
  const began = performance.now();
  const rows = await parts[part]();
  console.error(`${part}: ${((performance.now() - began) / 1000).toFixed(0)} s`);
  return table([...before, ...rows, ...calibration("after")]);
}

const path = inRoot("docs/performance.md");
const keep = (name: string, rows: string) =>
  writeFileSync(
    path,
    keepTable(
      readFileSync(path, "utf8"),
      { opening: `<!-- ${name} -->`, ending: `<!-- end ${name} -->` },
      rows,
    ),
  );

await reportFaults(async () => {
  const { values } = options();
  if (values.help) return console.log(usage);
  ensureBenchmarkTools();
  const asked = values.beside ? (["beside"] as const) : partsAsked(values.only);
  for (const name of asked) {
    const rows = name === "beside" ? await compared() : await measured(name);
    console.log(`${name}\n${rows}\n`);
    if (values.write) keep(name, rows);
  }
});
