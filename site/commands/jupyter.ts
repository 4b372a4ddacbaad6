import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";
import { createInterface } from "node:readline/promises";
import { inRoot } from "../build/paths.js";
import { dataFolder, presentSpec, removeSpec, specFile, writeSpec } from "./jupyter/kernelspec.js";
import { reportFaults } from "./report-faults.js";
import { optionsOf, UsageError } from "./usage.js";

const usage = `Usage: npm run jupyter -- --yes

Tells Jupyter of the kernel that runs the notebooks, then opens them in JupyterLab or the classic notebook.

  --yes      writes without asking
  --no-open  writes and opens nothing
  --remove   takes the kernel away again

What follows a second -- goes to the front end: npm run jupyter -- --yes -- --no-browser`;

const asked = () =>
  optionsOf({
    options: {
      yes: { type: "boolean", default: false },
      "no-open": { type: "boolean", default: false },
      remove: { type: "boolean", default: false },
      help: { type: "boolean", default: false },
    },
    allowPositionals: true,
  });

async function isAllowed(file: string): Promise<boolean> {
  if (!process.stdin.isTTY)
    throw new UsageError(`Nobody is here to be asked about ${file}; --yes writes it unasked.`);
  const others = presentSpec(file) === "other";
  const aside = others ? " The kernel of that name that is there is put aside." : "";
  const lines = createInterface({ input: process.stdin, output: process.stdout });
  const answer = await lines.question(`Write ${file}?${aside} [y/N] `);
  lines.close();
  return /^y(es)?$/i.test(answer.trim());
}

/** The front ends that this machine has, the newer one first. */
function frontEnd(): string | undefined {
  const folders = (process.env.PATH ?? "").split(delimiter);
  const ending = process.platform === "win32" ? ".exe" : "";
  return ["jupyter-lab", "jupyter-notebook"].find((name) =>
    folders.some((folder) => existsSync(join(folder, name + ending))),
  );
}

function open(args: readonly string[]): void {
  const program = frontEnd();
  if (program === undefined) {
    console.log(
      "There is no Jupyter front end on the path; install one (pip install jupyterlab, or on Debian: sudo apt-get install jupyter-notebook) and start this again, or open notebooks/ in VS Code with its Jupyter extension.",
    );
    return;
  }
  const { status, error } = spawnSync(program, [inRoot("notebooks"), ...args], {
    stdio: "inherit",
  });
  if (error) throw new UsageError(`${program} did not start (${error.message}).`);
  process.exitCode = status ?? 1;
}

function remove(file: string): void {
  const gone = removeSpec(file);
  console.log(gone ? `${file} is gone.` : `There is no kernel of Rollbook's at ${file}.`);
}

await reportFaults(async () => {
  const { values, positionals } = asked();
  if (values.help) return console.log(usage);
  const file = specFile(dataFolder(process.env, process.platform));
  if (values.remove) return remove(file);
  if (!values.yes && presentSpec(file) !== "ours" && !(await isAllowed(file)))
    return console.log("Nothing was written.");
  writeSpec(file);
  console.log(`The kernel stands in ${file}; npm run jupyter -- --remove takes it away.`);
  if (!values["no-open"]) open(positionals);
});
