import { type ChildProcess, spawn } from "node:child_process";
import { watch } from "node:fs";
import { inRoot } from "../build/paths.js";
import { courseFolder } from "../chapter/folder.js";
import { reportFaults } from "./report-faults.js";
import { serveCourse } from "./serve.js";
import { optionsOf } from "./usage.js";

const usage = `Usage: npm run dev -- --course my-course

  --course   a folder of notebooks (the workbook's own when left out)`;

const ignored = /(^|\/)(dist|node_modules|\.)/;
const settled = 40; // ms without a change, since an editor may write a file in pieces

/** A process that builds, stays, and builds again when told; a new one takes its place when the program itself changes. */
function builder(asked: readonly string[]) {
  let child: ChildProcess | undefined;
  let ending = false;
  const begin = (): void => {
    ending = false;
    const args = [inRoot("site/launch.mjs"), "build", "--stay", ...asked];
    child = spawn(process.execPath, args, { stdio: ["pipe", "inherit", "inherit"] });
    child.stdin?.on("error", () => {}); // it has ended, and says why itself
    child.on("exit", () => {
      child = undefined;
      if (ending) begin();
    });
  };
  return {
    again(): void {
      if (!child) begin();
      else if (!ending) child.stdin?.write("\n");
    },
    anew(): void {
      ending = true;
      if (child) child.stdin?.end();
      else begin();
    },
  };
}

/** Does something once files have changed and rest. */
function whenChanged(folder: string, recursive: boolean, work: () => void): void {
  let timer: NodeJS.Timeout | undefined;
  watch(folder, { recursive }, (_event, file) => {
    if (file && (recursive ? ignored.test(file) : !file.endsWith(".ipynb"))) return;
    clearTimeout(timer);
    timer = setTimeout(work, settled);
  });
}

await reportFaults(async () => {
  const { values } = optionsOf({
    options: {
      course: { type: "string", default: "" },
      help: { type: "boolean", default: false },
    },
  });
  if (values.help) return console.log(usage);
  const { notebooks } = courseFolder(values.course);
  const folder = values.course ? `${notebooks}/dist` : inRoot("dist");
  const { again, anew } = builder(values.course ? ["--course", notebooks] : []);
  whenChanged(notebooks, false, again);
  for (const program of ["lib", "site"]) whenChanged(inRoot(program), true, anew);
  again();
  console.log(`Watching; the course is at ${await serveCourse({ kept: false, folder })}`);
});
