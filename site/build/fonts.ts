import { readFileSync } from "node:fs";
import { parseHTML } from "linkedom";
import subsetFont from "subset-font";
import { withoutDrawings } from "./drawings.js";
import { inRoot } from "./paths.js";

/** Each of KaTeX's fonts, and what in the HTML calls for it. */
const faces = [
  {
    file: "KaTeX_Main-Regular",
    family: "KaTeX_Main",
    style: "normal",
    weight: 400,
    calls: /katex-html/,
  },
  {
    file: "KaTeX_Main-Bold",
    family: "KaTeX_Main",
    style: "normal",
    weight: 700,
    calls: /mathbf|textbf/,
  },
  {
    file: "KaTeX_Main-Italic",
    family: "KaTeX_Main",
    style: "italic",
    weight: 400,
    calls: /mathit|textit/,
  },
  {
    file: "KaTeX_Math-Italic",
    family: "KaTeX_Math",
    style: "italic",
    weight: 400,
    calls: /mathnormal/,
  },
  { file: "KaTeX_AMS-Regular", family: "KaTeX_AMS", style: "normal", weight: 400, calls: /amsrm/ },
  {
    file: "KaTeX_Size1-Regular",
    family: "KaTeX_Size1",
    style: "normal",
    weight: 400,
    calls: /size1|small-op/,
  },
  {
    file: "KaTeX_Size2-Regular",
    family: "KaTeX_Size2",
    style: "normal",
    weight: 400,
    calls: /size2|large-op/,
  },
  {
    file: "KaTeX_Size3-Regular",
    family: "KaTeX_Size3",
    style: "normal",
    weight: 400,
    calls: /size3/,
  },
  {
    file: "KaTeX_Size4-Regular",
    family: "KaTeX_Size4",
    style: "normal",
    weight: 400,
    calls: /size4|delimsizinginner/,
  },
];

const katexFile = (path: string) => readFileSync(inRoot(`node_modules/katex/dist/${path}`));

/** The letters of every formula; the rest of the text is set in the reader's own fonts. */
function lettersIn(html: string): string {
  const { document } = parseHTML(`<body>${withoutDrawings(html)}</body>`);
  const formulas = [...document.querySelectorAll(".katex-html")];
  return [...new Set(formulas.map(({ textContent }) => textContent).join(""))].join("");
}

/** KaTeX's style sheet with just the fonts and letters that the course uses, held inside it. */
export async function formulaStyles(html: string): Promise<string> {
  const letters = lettersIn(html);
  if (letters === "") return "";
  const used = faces.filter(({ calls }) => calls.test(html));
  const rules = await Promise.all(
    used.map(async ({ file, family, style, weight }) => {
      const font = await subsetFont(katexFile(`fonts/${file}.woff2`), letters, {
        targetFormat: "woff2",
      });
      const source = `url(data:font/woff2;base64,${font.toString("base64")}) format("woff2")`;
      return `@font-face{font-family:${family};font-style:${style};font-weight:${weight};src:${source}}`;
    }),
  );
  const sheet = katexFile("katex.min.css")
    .toString("utf8")
    .replace(/@font-face\{[^}]*\}/g, "");
  return rules.join("\n") + sheet;
}
