import { readFileSync, writeFileSync, readdirSync } from "node:fs";
import { readNotebooks } from "./build/build.js";
import { render } from "./build/markdown.js";
import { parseHTML } from "linkedom";
const texts: [string,string][] = readNotebooks().flatMap((n) => n.cells.filter((c) => c.kind === "markdown").map((c) => [`${n.name}/${c.id}`, c.source] as [string,string]));
for (const f of ["docs/glossary.md","docs/model.md","site/welcome.md"]) texts.push([f, readFileSync(f,"utf8")]);
const out: Record<string, unknown> = {};
for (const [id, t] of texts) { const html = render(t); const { document } = parseHTML(`<body>${html}</body>`);
  out[id] = { text: document.body.textContent, formulas: [...document.querySelectorAll(".katex")].map((k:any) => [k.querySelector("annotation")?.textContent, k.querySelector(".katex-html")?.textContent, k.parentElement.className, k.querySelector("math").getAttribute("display")]), html: html.replace(/<span class="katex[\s\S]*?<\/span><\/span><\/span>/g,"K").slice(0,0) }; }
writeFileSync(process.argv[2]!, JSON.stringify(out, null, 1));
console.log(Object.values(out).reduce((a: number, o: any) => a + o.formulas.length, 0));
