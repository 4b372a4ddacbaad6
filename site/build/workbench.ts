import { createHash } from "node:crypto";
import { cpSync } from "node:fs";
import { bundledText, bundleWorkbench } from "./bundle.js";
import { inRoot } from "./paths.js";

const part = (file: string): string => inRoot(`site/workbench/${file}`);

const hashOf = (text: string): string =>
  `sha256-${createHash("sha256").update(text).digest("base64")}`;

/** Writes the scripts with which a chapter's cells are edited and run; gives the hash of the sandbox's own script. */
export async function writeWorkbench(out: string): Promise<string> {
  const relay = await bundledText(part("sandbox/relay.ts"));
  const hash = hashOf(relay);
  const built = {
    RUNTIME: await bundledText(part("sandbox/runtime.ts")),
    RELAY: relay,
    RELAY_HASH: hash,
  };
  const define = Object.entries(built).map(([name, text]) => [name, JSON.stringify(text)]);
  const entryPoints = [
    { in: part("open.ts"), out: "listing" },
    { in: part("main.ts"), out: "workbench" },
  ];
  await bundleWorkbench(entryPoints, out, Object.fromEntries(define));
  cpSync(part("style.css"), `${out}/workbench.css`);
  return hash;
}
