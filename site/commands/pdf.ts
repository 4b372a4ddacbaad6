import { mkdirSync, writeFileSync } from "node:fs";
import { inRoot } from "../build/paths.js";
import { dateFrom, nameFrom, numbersFrom, urlFrom } from "../primer/options.js";
import { partsOfCourse } from "../primer/parts.js";
import { isPaper, writePdf } from "../primer/pdf.js";
import { primerHtml } from "../primer/primer.js";
import { progressTo } from "./progress.js";
import { reportFaults } from "./report-faults.js";
import { optionsOf, outFrom, UsageError } from "./usage.js";

const usage = `Usage: npm run pdf -- --paper A4 --out course.pdf

  --paper     A4 or Letter (A4 when left out)
  --out       where it goes (course.pdf when left out)
  --name, --date, --chapters, --url as for npm run primer`;

const asked = () =>
  optionsOf({
    options: {
      paper: { type: "string", default: "A4" },
      name: { type: "string", default: "" },
      date: { type: "string", default: new Date().toISOString().slice(0, 10) },
      chapters: { type: "string", default: "" },
      url: { type: "string", default: "" },
      out: { type: "string", default: "course.pdf" },
      help: { type: "boolean", default: false },
    },
  });

async function writeCourse(): Promise<void> {
  const { values } = asked();
  if (values.help) return console.log(usage);
  const { paper } = values;
  if (!isPaper(paper)) throw new UsageError(`paper takes A4 or Letter, not ${paper}.`);
  const [name, date] = [nameFrom(values.name), dateFrom(values.date)];
  const [out, url] = [outFrom(values.out), urlFrom(values.url)];
  const parts = await partsOfCourse(numbersFrom(values.chapters), progressTo(process.stdout));
  mkdirSync(inRoot(".cache"), { recursive: true });
  const page = inRoot(".cache/course.html");
  writeFileSync(page, primerHtml({ ...parts, name, date, url, scripts: [] }));
  await writePdf(page, out, paper);
  console.log(out);
}

await reportFaults(writeCourse);
