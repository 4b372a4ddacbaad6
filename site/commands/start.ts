import { buildIfChanged } from "../build/build-if-changed.js";
import { progressTo } from "./progress.js";
import { reportFaults } from "./report-faults.js";
import { serveCourse } from "./serve.js";

await reportFaults(async () => {
  await buildIfChanged(progressTo(process.stdout));
  console.log(`The course is at ${await serveCourse()} (stop it with Ctrl-C)`);
});
