import { readFileSync } from "node:fs";
import { transform } from "esbuild";
import { parseHTML } from "linkedom";
import subsetFont from "subset-font";
import { withoutDrawings } from "./drawings.js";
import { kept } from "./kept.js";
import { inRoot } from "./paths.js";

/** A KaTeX font, and what sets text in it. */
interface Face {
  readonly file: string;
  readonly family: string;
  readonly style?: "italic";
  readonly weight?: 700;
  /** Selects the innermost elements whose text it sets, as KaTeX's own style sheet does. */
  readonly sets: string;
}

const faces: readonly Face[] = [
  {
    file: "KaTeX_Main-Bold",
    family: "KaTeX_Main",
    weight: 700,
    sets: ".mathbf, .textbf",
  },
  {
    file: "KaTeX_Main-Italic",
    family: "KaTeX_Main",
    style: "italic",
    sets: ".mathit, .textit",
  },
  {
    file: "KaTeX_Math-Italic",
    family: "KaTeX_Math",
    style: "italic",
    sets: ".mathnormal",
  },
  {
    file: "KaTeX_AMS-Regular",
    family: "KaTeX_AMS",
    sets: ".amsrm, .mathbb, .textbb",
  },
  {
    file: "KaTeX_Size1-Regular",
    family: "KaTeX_Size1",
    sets: ".delimsizing.size1, .delim-size1, .small-op",
  },
  {
    file: "KaTeX_Size2-Regular",
    family: "KaTeX_Size2",
    sets: ".delimsizing.size2, .large-op",
  },
  {
    file: "KaTeX_Size3-Regular",
    family: "KaTeX_Size3",
    sets: ".delimsizing.size3",
  },
  {
    file: "KaTeX_Size4-Regular",
    family: "KaTeX_Size4",
    sets: ".delimsizing.size4, .delim-size4",
  },
  { file: "KaTeX_Main-Regular", family: "KaTeX_Main", sets: ".katex-html" },
];

const katexFile = (path: string) => readFileSync(inRoot(`node_modules/katex/dist/${path}`));

type Letters = ReadonlyMap<Face, string>;

/** The letters that each face sets; the rest of the text is set in the reader's own fonts. */
function lettersOf(html: string): Letters {
  const { document } = parseHTML(`<body>${withoutDrawings(html)}</body>`);
  const formulas = document.querySelectorAll(".katex-html");
  const letters = new Map<Face, string>();
  const take = (element: Element, around?: Face) => {
    const face = faces.find(({ sets }) => element.matches(sets)) ?? around;
    for (const node of element.childNodes) {
      if (node.nodeType === 1) take(node as Element, face);
      else if (face) letters.set(face, (letters.get(face) ?? "") + node.textContent);
    }
  };
  for (const formula of formulas) take(formula);
  return letters;
}

/** The letters of pages that follow each other. */
function together(pages: readonly Letters[]): Letters {
  const all = new Map<Face, string>();
  for (const [face, letters] of pages.flatMap((page) => [...page]))
    all.set(face, (all.get(face) ?? "") + letters);
  return all;
}

async function ruleOf({ file, family, style, weight }: Face, letters: string) {
  const whole = katexFile(`fonts/${file}.woff2`);
  const font = await subsetFont(whole, [...new Set(letters)].join(""), {
    targetFormat: "woff2",
    noHinting: true, // for the pixels of old screens; two thirds of a face of few letters
  });
  const source = `url(data:font/woff2;base64,${font.toString("base64")}) format("woff2")`;
  return `@font-face{font-family:${family};font-style:${style ?? "normal"};font-weight:${weight ?? 400};src:${source}}`;
}

/** KaTeX's style sheet without its fonts and without the rules for elements that no page has. */
function rulesFor(html: string): string {
  const has = new Set(
    [...html.matchAll(/class="([^"]*)"/g)].flatMap(([, names = ""]) => names.split(" ")),
  );
  const isUsed = (selector: string) =>
    [...selector.matchAll(/\.([a-zA-Z][\w-]*)/g)].every(([, name = ""]) => has.has(name));
  const rules = katexFile("katex.min.css")
    .toString("utf8")
    .matchAll(/([^{}]+)(\{[^{}]*\})/g);
  return [...rules]
    .map(([, selectors = "", body = ""]) => [selectors.split(",").filter(isUsed).join(","), body])
    .filter(([selectors]) => selectors !== "" && !selectors?.startsWith("@font-face"))
    .map((rule) => rule.join(""))
    .join("");
}

/** The rules by which the formulas in these pages, given by name, are set, with just the fonts and letters that they use inside. */
export async function formulaStyles(pages: ReadonlyMap<string, string>): Promise<string> {
  const letters = together(
    [...pages].map(([name, html]) => kept(`letters of ${name}`, html, () => lettersOf(html))),
  );
  if (letters.size === 0) return "";
  const fonts = await Promise.all(
    [...letters].map(([face, used]) => kept(`font ${face.file}`, used, () => ruleOf(face, used))),
  );
  return `${fonts.join("\n")}\n${rulesFor([...pages.values()].join(""))}`;
}

/** A style sheet without what only its writers read. */
export async function shortStyles(sheet: string): Promise<string> {
  return (await transform(sheet, { loader: "css", minify: true })).code;
}
