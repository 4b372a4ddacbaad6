import { cpSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { inRoot } from "./paths.js";

const PICTURE = "preview.png";

/** A page's head with what others show of a link to it: address, title, words, and a picture. */
export function withPreview(html: string, file: string, url: string): string {
  const [tag = "", description] = /<meta name="description" content="([^"]*)">/.exec(html) ?? [];
  const [, title] = /<title>([^<]*)<\/title>/.exec(html) ?? [];
  if (description === undefined || title === undefined) return html;
  const address = `${url}${file === "index.html" ? "" : file}`;
  const told = { title, description, url: address, image: url + PICTURE, type: "website" };
  const metas = Object.entries(told).map(
    ([name, content]) => `<meta property="og:${name}" content="${content}">`,
  );
  return html.replace(tag, [tag, `<link rel="canonical" href="${address}">`, ...metas].join("\n"));
}

/** Writes what others show of a link into every page of a course whose address is known. */
export function writePreviews(out: string, url: string): void {
  if (url === "") return;
  cpSync(inRoot("docs/images/chapter.png"), `${out}/${PICTURE}`);
  for (const file of readdirSync(out).filter((name) => name.endsWith(".html"))) {
    const html = readFileSync(`${out}/${file}`, "utf8");
    if (file !== "404.html") writeFileSync(`${out}/${file}`, withPreview(html, file, url));
  }
}
