import { createHash } from "node:crypto";
import { cpSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { bundlePages, bundleWorker, type Hashes } from "./bundle.js";
import { inRoot } from "./paths.js";

/** What a page never asks for by itself, and what must come from the network. */
const leftOut = /\.ipynb$|^(?:sw\.js|preview\.png|404\.html|api)$|^\./;

/** Large, and wanted by few: kept from the first time that it is used. */
const keptOnceUsed = /^workbench\.|\.code\.html$|^NOTICES\.txt$/;

const icons = ["icon.svg", "icon-180.png", "icon-192.png", "icon-512.png"];

const manifest = {
  name: "Rollbook: how roll stiffness changes a car’s handling",
  short_name: "Rollbook",
  description: "A teaching workbook about how roll stiffness changes a car’s handling",
  lang: "en",
  start_url: "index.html",
  scope: "./",
  display: "standalone",
  background_color: "#fbfaf6",
  theme_color: "#fbfaf6",
  icons: [
    { src: "icon.svg", sizes: "any", type: "image/svg+xml" },
    { src: "icon-192.png", sizes: "192x192", type: "image/png", purpose: "any" },
    { src: "icon-512.png", sizes: "512x512", type: "image/png", purpose: "any" },
  ],
};

/** The hash of each file, by which the worker knows it. */
const hashesOf = (out: string, files: readonly string[]): Hashes =>
  Object.fromEntries(
    files.map((file) => [
      file,
      createHash("sha256")
        .update(readFileSync(`${out}/${file}`))
        .digest("base64"),
    ]),
  );

/** A name for just these contents and this worker. */
const versionOf = (...hashes: readonly Hashes[]): string =>
  createHash("sha256")
    .update(readFileSync(inRoot("site/offline/worker.ts")))
    .update(JSON.stringify(hashes))
    .digest("hex")
    .slice(0, 16);

/** Writes what lets a device keep the course: manifest, icons, and the worker that holds its files. */
export async function writeOffline(out: string): Promise<void> {
  for (const icon of icons) cpSync(inRoot(`site/offline/${icon}`), `${out}/${icon}`);
  writeFileSync(`${out}/manifest.webmanifest`, JSON.stringify(manifest));
  await bundlePages([{ in: inRoot("site/offline/main.ts"), out: "offline" }], out);
  const files = readdirSync(out)
    .filter((file) => !leftOut.test(file))
    .sort();
  const hashes = (used: boolean) =>
    hashesOf(
      out,
      files.filter((file) => keptOnceUsed.test(file) === used),
    );
  const [first, later] = [hashes(false), hashes(true)];
  await bundleWorker(`${out}/sw.js`, { first, later, version: versionOf(first, later) });
}
