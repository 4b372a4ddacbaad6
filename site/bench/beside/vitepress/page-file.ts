import type { Notebook } from "../../../build/notebook.js";
import { wrapDisplays } from "../wrap-displays.js";

const imports = /^import\s+(type\s+)?(\{[^}]*\})\s+from\s+("[^"]+");/gm;

/** Code whose imports are loaded in the browser, once the page is there: at the build there is no document. */
const loadedLater = (source: string): string =>
  source.replace(imports, (_, type: string | undefined, names: string, from: string) => {
    const values = names.replace(/\btype \w+,?/g, "").replace(/ as /g, ": ");
    return type ? "" : `const ${values} = await import(${from});`;
  });

/** Prose in which nothing is an expression of the tool's own. */
const plain = (source: string): string => source.replaceAll("{{", "&#123;&#123;");

/** A chapter as a page of the tool: prose as it is, cells run one after the other once the page is mounted. */
export function pageFile({ cells }: Notebook): string {
  const code: string[] = [];
  const parts = cells.map(({ kind, source }) => {
    if (kind !== "code") return plain(source);
    const place = `cell-${code.length}`;
    code.push(`place = "${place}";\n${loadedLater(wrapDisplays(source))}`);
    return `<div id="${place}"></div>`;
  });
  const script = `import { onMounted } from "vue";
onMounted(async () => {
let place = "";
const display = (shown: Node) => document.getElementById(place)?.append(shown);
${code.join("\n")}
});`;
  return `<script setup lang="ts">\n${script.replaceAll("</script", "<\\/script")}\n</script>\n\n${parts.join("\n\n")}\n`;
}

/** Its formulas rendered at the build, its pages in their default dress. */
export const config = `import { defineConfig } from "vitepress";

export default defineConfig({
  title: "Rollbook",
  markdown: { math: true },
  vite: { build: { target: "es2022" } },
});
`;
