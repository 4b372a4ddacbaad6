import { spawn } from "node:child_process";
import { watch } from "node:fs";
import { inRoot } from "../build/paths.js";
import { reportFaults } from "./report-faults.js";
import { serveCourse } from "./serve.js";

const ignored = /(^|\/)(dist|node_modules|\.)/;
let running = false;
let wanted = false;

/** Builds in a process of its own, so that a change of the build itself counts too. */
function rebuild(): void {
  if (running) {
    wanted = true;
    return;
  }
  running = true;
  spawn(process.execPath, [inRoot("site/launch.mjs"), "build"], { stdio: "inherit" }).on(
    "exit",
    () => {
      running = false;
      if (!wanted) return;
      wanted = false;
      rebuild();
    },
  );
}

let timer: NodeJS.Timeout | undefined;
for (const folder of ["notebooks", "lib", "site"]) {
  watch(inRoot(folder), { recursive: true }, (_event, file) => {
    if (file && ignored.test(file)) return;
    clearTimeout(timer);
    timer = setTimeout(rebuild, 150);
  });
}
rebuild();
await reportFaults(async () =>
  console.log(`Watching; the course is at ${await serveCourse({ kept: false })}`),
);
