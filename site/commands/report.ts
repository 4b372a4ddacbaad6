import { answerTo } from "./report/answer.js";
import { reportFaults } from "./report-faults.js";

await reportFaults(() => {
  const { out, err, code = 0 } = answerTo(process.argv.slice(2));
  process.stderr.write(err);
  process.stdout.write(out);
  process.exitCode = code;
});
