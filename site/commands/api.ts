import { makeApi } from "../api/make.js";
import { buildIfChanged } from "../build/build-if-changed.js";
import { progressTo } from "./progress.js";
import { reportFaults } from "./report-faults.js";

await reportFaults(async () => {
  makeApi();
  await buildIfChanged(progressTo(process.stdout));
  console.log("The library's functions are in dist/api/, and the course links to them.");
});
