import { checkChapter } from "../chapter/check.js";
import { courseFolder } from "../chapter/folder.js";
import { newChapter } from "../chapter/new.js";
import { progressTo } from "./progress.js";
import { reportFaults } from "./report-faults.js";
import { optionsOf, UsageError } from "./usage.js";

const usage = `Usage: npm run chapter -- new "Where the ballast sits"
       npm run chapter -- check 10

  new        makes the next chapter: a notebook with the sections, its pins, and a list of calls to read
  check      looks at one chapter and says what is to be mended
  --course   a folder of notebooks outside the repository, its pins in a folder pins beside them`;

async function check(number: string, course: string): Promise<void> {
  if (!/^\d{1,2}$/.test(number))
    throw new UsageError("check takes the number of a chapter, such as 10.");
  const { notebook, faults, pinned } = await checkChapter(
    number,
    courseFolder(course),
    progressTo(process.stdout),
  );
  const { name, cells } = notebook;
  if (faults.length === 0)
    return console.log(
      `${name}: nothing to mend. ${cells.length} cells, ${pinned} numbers as pinned.`,
    );
  console.log([`${name}: ${faults.length} to mend.`, ...faults].join("\n- "));
  process.exitCode = 1;
}

function make(title: string, course: string): void {
  const { number, notebook, pins, calls } = newChapter(title, courseFolder(course));
  const option = course && ` --course ${course}`;
  console.log(`${notebook}\n${pins}\n${calls}`);
  console.log(`Write, then: npm run chapter -- check ${number}${option}`);
}

await reportFaults(async () => {
  const { values, positionals } = optionsOf({
    allowPositionals: true,
    options: { course: { type: "string", default: "" }, help: { type: "boolean", default: false } },
  });
  const [what, which = "", ...more] = positionals;
  if (values.help || what === undefined) return console.log(usage);
  if (more.length > 0) throw new UsageError("Put a title in quotation marks.");
  if (what === "new") return make(which, values.course);
  if (what === "check") return check(which, values.course);
  throw new UsageError(`chapter takes new or check, not ${what}; --help shows both.`);
});
