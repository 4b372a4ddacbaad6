import { buildIfChanged } from "../build/build-if-changed.js";
import { progressTo } from "./progress.js";
import { reportFaults } from "./report-faults.js";

await reportFaults(async () => {
  const started = performance.now();
  const built = await buildIfChanged(progressTo(process.stdout));
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  console.log(
    built
      ? `The course is in dist/ (${seconds} s)`
      : `Nothing changed; dist/ is current (${seconds} s)`,
  );
});
