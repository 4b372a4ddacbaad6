import { createInterface } from "node:readline";
import type { BuildOptions } from "../build/build.js";
import { buildIfChanged } from "../build/build-if-changed.js";
import { keepWhatIsMade } from "../build/kept.js";
import { inRoot } from "../build/paths.js";
import { courseFolder } from "../chapter/folder.js";
import { urlFrom } from "../primer/options.js";
import { progressTo } from "./progress.js";
import { reportFaults } from "./report-faults.js";
import { fromCaller, optionsOf } from "./usage.js";

const usage = `Usage: npm run build -- --course my-course --out my-course/dist

  --course   a folder of notebooks, also outside the repository (the workbook's own when left out)
  --url      where the course will be found: pages then say so to whoever shows a link to them, with a picture
  --rest     where the chapters are found that such a folder does not have: links lead there (to
             nowhere, and are plain words, when left out)
  --stay     builds again at each line that it is given, until nothing more comes
  --out      where the course goes (dist in that folder when left out)`;

/** Where the course is read and written; the workbook's own where no folder is named. */
function places(course: string, out: string) {
  if (course === "") return { folder: out ? fromCaller(out) : inRoot("dist"), options: {} };
  const { notebooks } = courseFolder(course);
  const folder = out ? fromCaller(out) : `${notebooks}/dist`;
  return { folder, options: { notebooks, joined: inRoot(".cache/joined-course") } };
}

async function buildOnce(course: BuildOptions & { out: string }): Promise<void> {
  const started = performance.now();
  const built = await buildIfChanged(progressTo(process.stdout), course);
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  console.log(
    built
      ? `The course is in ${course.out} (${seconds} s)`
      : `Nothing changed; ${course.out} is current (${seconds} s)`,
  );
}

await reportFaults(async () => {
  const text = { type: "string", default: "" } as const;
  const { values } = optionsOf({
    options: {
      course: text,
      out: text,
      url: text,
      rest: text,
      stay: { type: "boolean", default: false },
      help: { type: "boolean", default: false },
    },
  });
  if (values.help) return console.log(usage);
  const { folder, options } = places(values.course, values.out);
  const course = {
    ...{ ...options, out: folder },
    ...{ url: urlFrom(values.url), rest: urlFrom(values.rest, "rest") },
  };
  if (!values.stay) return buildOnce(course);
  keepWhatIsMade();
  await reportFaults(() => buildOnce(course));
  for await (const _line of createInterface(process.stdin))
    await reportFaults(() => buildOnce(course));
});
