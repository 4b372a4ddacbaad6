import { pathToFileURL } from "node:url";
import { chromium } from "playwright-core";
import { CourseError } from "../build/notebook.js";
import { chromiumPath } from "../commands/needs.js";

const papers = ["A4", "Letter"] as const;
export type Paper = (typeof papers)[number];

export const isPaper = (text: string): text is Paper => papers.some((paper) => paper === text);

const foot = `<div style="width:100%;font:8pt sans-serif;text-align:center;color:#555">
<span class="pageNumber"></span> / <span class="totalPages"></span></div>`;

/** Prints a page that needs no script, with outline, tags and page numbers. */
export async function writePdf(page: string, out: string, paper: Paper): Promise<void> {
  const executablePath = chromiumPath();
  if (!executablePath) {
    throw new CourseError("A PDF needs Chromium; on Debian, run: sudo apt-get install chromium");
  }
  const browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
  try {
    const context = await browser.newContext({ javaScriptEnabled: false, offline: true });
    const tab = await context.newPage();
    await tab.goto(pathToFileURL(page).href);
    await tab.pdf({
      path: out,
      format: paper,
      outline: true,
      tagged: true,
      displayHeaderFooter: true,
      headerTemplate: "<span></span>",
      footerTemplate: foot,
      margin: { top: "18mm", bottom: "18mm", left: "16mm", right: "16mm" },
    });
  } finally {
    await browser.close();
  }
}
