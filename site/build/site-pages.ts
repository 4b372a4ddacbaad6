import { cpSync, existsSync, writeFileSync } from "node:fs";
import { moved, movedHtml } from "../pages/moved/page.js";
import { pages } from "../pages/pages.js";
import { bundlePages, bundlePhysics, bundleViews, type Taking } from "./bundle.js";
import type { Chapter } from "./chapter.js";
import { kept } from "./kept.js";
import { inRoot } from "./paths.js";
import { policy, shell } from "./shell.js";

/** A page beside the chapters: its folder below site/pages holds main.ts, worker.ts and style.css where it has them. */
export interface SitePage {
  readonly name: string;
  readonly title: string;
  readonly description: string;
  /** HTML of the main part, from the chapters where it tells of them; it must make sense without JavaScript. */
  readonly main: string | ((chapters: readonly Chapter[]) => string);
}

const part = (name: string, file: string): string => inRoot(`site/pages/${name}/${file}`);

/** The script of a page; nothing where it has none. */
const mainOf = (name: string): string | undefined =>
  [part(name, "main.tsx"), part(name, "main.ts")].find((file) => existsSync(file));

/** Scripts that a page loads, in their order. */
function scriptsOf(name: string, live: boolean, { physics, views }: Taking): string[] {
  const before = [physics.has(name) && "physics.js", views.has(name) && "views.js"];
  return ["course.js", ...before, live && `${name}.js`].filter((script) => script !== false);
}

/** Former addresses lead on. */
function writeMoved(out: string): void {
  for (const { from, to } of moved) writeFileSync(`${out}/${from}.html`, movedHtml(to, policy));
}

const livePages = () => pages.map(({ name }) => name).filter((name) => mainOf(name) !== undefined);

/** Writes the scripts of the pages beside the chapters. */
export async function writePageScripts(out: string): Promise<Taking> {
  const live = livePages();
  const working = live.filter((name) => existsSync(part(name, "worker.ts")));
  const taking = await bundlePages(
    [
      ...live.map((name) => ({ in: mainOf(name) ?? "", out: name })),
      ...working.map((name) => ({ in: part(name, "worker.ts"), out: `${name}-worker` })),
      { in: inRoot("site/bands/worker.ts"), out: "bands-worker" },
      { in: part("moved", "main.ts"), out: "moved" },
      { in: inRoot("site/hand-over/decoder.ts"), out: "decoder" },
    ],
    out,
  );
  await bundlePhysics(`${out}/physics.js`);
  await bundleViews(`${out}/views.js`);
  return taking;
}

/** Writes every page of its own with its styles. */
export function writeSitePages(out: string, taking: Taking, chapters: readonly Chapter[]): void {
  const live = livePages();
  writeMoved(out);
  for (const page of pages) {
    const { name, title } = page;
    const styled = existsSync(part(name, "style.css"));
    if (styled) cpSync(part(name, "style.css"), `${out}/${name}.css`);
    const scripts = scriptsOf(name, live.includes(name), taking);
    const styles = styled ? [`${name}.css`] : [];
    const still = kept(`main of ${name}`, "", () => page.main);
    const main = typeof still === "string" ? still : still(chapters);
    const html = shell({ ...page, main, title: `${title} · Rollbook`, scripts, styles });
    writeFileSync(`${out}/${name}.html`, html);
  }
}
