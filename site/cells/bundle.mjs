// Writes dist/front-end.js, which a notebook carries into a Jupyter front end. Plain JavaScript, since
// the packages are compiled before anything else can run.
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));

function replaced(text, pattern, by) {
  if (!pattern.test(text)) throw new Error(`course.css: nothing like ${pattern}`);
  return text.replace(pattern, by);
}

/** The course's styles for the inside of one output: its own root, the front end's theme, its own size of letters. */
function stylesInside(css) {
  const wide = /@media \(min-width: 110rem\) \{\s*:root \{[^}]*\}\s*\}/;
  const dark = /@media \(prefers-color-scheme: dark\) \{\s*:root (\{[^}]*\})\s*\}/;
  const themed = replaced(
    replaced(css, wide, ""),
    dark,
    ':host([data-theme="dark"]) $1\n:host([data-theme="dark"]) { color-scheme: dark; }\n' +
      ':host([data-theme="light"]) { color-scheme: light; }',
  );
  const sized = themed.replace(/([\d.]+)rem\b/g, (_, size) => `${Number(size) * 16}px`);
  return `${sized.replaceAll(":root", ":host").replace("font:\n    100%", "font:\n    16px")}
:host { display: block; }
.output { padding: 8px 16px; }
.output > * { margin-block: 0; }`;
}

/** The notices of the packages of which something came in, as they ask. */
function noticesOf({ outputs }) {
  const inputs = Object.values(outputs).flatMap((output) => Object.entries(output.inputs));
  const came = inputs.flatMap(([file, { bytesInOutput }]) => {
    const [folder] = /^.*\bnode_modules\/(?:@[^/]+\/)?[^/]+/.exec(file) ?? [];
    return folder && bytesInOutput > 0 ? [folder] : [];
  });
  return [...new Set(came)].sort().map((folder) => {
    const text = readdirSync(folder).find((file) => /^licen[cs]e/i.test(file));
    if (!text) throw new Error(`${folder} is carried, but no file says under which licence.`);
    const { name, version } = JSON.parse(readFileSync(`${folder}/package.json`, "utf8"));
    return `${name} ${version}\n\n${readFileSync(`${folder}/${text}`, "utf8").trim()}`;
  });
}

const css = readFileSync(here("../styles/course.css"), "utf8");
const { outputFiles, metafile } = await build({
  ...{ bundle: true, minify: true, format: "iife", target: "es2022", charset: "utf8" },
  ...{ write: false, metafile: true, absWorkingDir: here("../..") },
  entryPoints: [here("browser/front-end/main.ts")],
  outfile: here("dist/front-end.js"),
  alias: { "@rollbook/lib": here("../../lib/index.ts") },
  define: { STYLES: JSON.stringify(stylesInside(css)), "window.devicePixelRatio": "2" },
});
process.chdir(here("../.."));
const notices = noticesOf(metafile).join("\n\n").replaceAll("*/", "* /");
writeFileSync(
  here("dist/front-end.js"),
  `/*! Holds parts of:\n\n${notices}\n*/\n${outputFiles[0].text}`,
);
