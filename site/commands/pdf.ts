import { mkdirSync, writeFileSync } from "node:fs";
import { inRoot } from "../build/paths.js";
import { askedFor, usualOptions, usualUsage } from "../primer/asked.js";
import { partsOfCourse } from "../primer/parts.js";
import { isPaper, writePdf } from "../primer/pdf.js";
import { primerHtml } from "../primer/primer.js";
import { progressTo } from "./progress.js";
import { reportFaults } from "./report-faults.js";
import { optionsOf, outFrom, UsageError } from "./usage.js";

const usage = `Usage: npm run pdf -- --paper A4 --out course.pdf

  --paper     A4 or Letter (A4 when left out)
  --out       where it goes (course.pdf when left out)${usualUsage}`;

async function writeCourse(): Promise<void> {
  const paper = { type: "string", default: "A4" } as const;
  const out = { type: "string", default: "course.pdf" } as const;
  const { values } = optionsOf({ options: { ...usualOptions, paper, out } });
  if (values.help) return console.log(usage);
  if (!isPaper(values.paper))
    throw new UsageError(`paper takes A4 or Letter, not ${values.paper}.`);
  const { numbers, ...asked } = askedFor(values);
  const place = outFrom(values.out);
  const parts = await partsOfCourse(numbers, progressTo(process.stdout), asked.madeFor);
  mkdirSync(inRoot(".cache"), { recursive: true });
  const page = inRoot(".cache/course.html");
  writeFileSync(page, primerHtml({ ...parts, ...asked, scripts: [] }));
  await writePdf(page, place, values.paper);
  console.log(place);
  if (asked.url === "")
    console.log("No --url: the pages cannot say where figures move and answers open.");
}

await reportFaults(writeCourse);
