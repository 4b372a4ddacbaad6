import { askedFor, usualOptions, usualUsage } from "../primer/asked.js";
import { partsOfCourse, scriptsOf } from "../primer/parts.js";
import { primerHtml } from "../primer/primer.js";
import { progressTo } from "./progress.js";
import { reportFaults } from "./report-faults.js";
import { optionsOf, outFrom, writeOut } from "./usage.js";

const usage = `Usage: npm run primer -- --name "Club" --date 2026-11-25 --chapters 01,03 --out primer.html
${usualUsage}
  --out       where it goes (primer.html when left out)`;

/** What goes by any mail. */
const lightBytes = 2_000_000;

async function writePrimer(): Promise<void> {
  const out = { type: "string", default: "primer.html" } as const;
  const { values } = optionsOf({ options: { ...usualOptions, out } });
  if (values.help) return console.log(usage);
  const { numbers, ...asked } = askedFor(values);
  const place = outFrom(values.out);
  const parts = await partsOfCourse(numbers, progressTo(process.stdout), asked.madeFor);
  const scripts = await scriptsOf(parts.chapters);
  const html = primerHtml({ ...parts, ...asked, scripts });
  const bytes = Buffer.byteLength(html);
  writeOut(place, html);
  console.log(`${place}: ${parts.chapters.length} chapters, ${(bytes / 1e6).toFixed(2)} MB`);
  if (bytes > lightBytes)
    console.log("That is more than 2 MB, which some mail does not take; name fewer --chapters.");
}

await reportFaults(writePrimer);
