import { dateFrom, nameFrom, numbersFrom, urlFrom } from "../primer/options.js";
import { partsOfCourse, scriptsOf } from "../primer/parts.js";
import { primerHtml } from "../primer/primer.js";
import { progressTo } from "./progress.js";
import { reportFaults } from "./report-faults.js";
import { optionsOf, outFrom, writeOut } from "./usage.js";

const usage = `Usage: npm run primer -- --name "Club" --date 2026-11-25 --chapters 01,03 --out primer.html

  --name      whom it is for, up to 80 characters (nobody named when left out)
  --date      the day on its first page (today when left out)
  --chapters  numbers of its chapters (all when left out)
  --url       address of the live course, to which predictions and other chapters then lead
  --out       where it goes (primer.html when left out)`;

/** What goes by any mail. */
const lightBytes = 2_000_000;

const asked = () =>
  optionsOf({
    options: {
      name: { type: "string", default: "" },
      date: { type: "string", default: new Date().toISOString().slice(0, 10) },
      chapters: { type: "string", default: "" },
      url: { type: "string", default: "" },
      out: { type: "string", default: "primer.html" },
      help: { type: "boolean", default: false },
    },
  });

async function writePrimer(): Promise<void> {
  const { values } = asked();
  if (values.help) return console.log(usage);
  const [name, date] = [nameFrom(values.name), dateFrom(values.date)];
  const [out, url] = [outFrom(values.out), urlFrom(values.url)];
  const parts = await partsOfCourse(numbersFrom(values.chapters), progressTo(process.stdout));
  const scripts = await scriptsOf(parts.chapters);
  const html = primerHtml({ ...parts, name, date, url, scripts });
  const bytes = Buffer.byteLength(html);
  writeOut(out, html);
  console.log(`${out}: ${parts.chapters.length} chapters, ${(bytes / 1e6).toFixed(2)} MB`);
  if (bytes > lightBytes)
    console.log("That is more than 2 MB, which some mail does not take; name fewer --chapters.");
}

await reportFaults(writePrimer);
