import { readFileSync } from "node:fs";
import { build } from "esbuild";
import { inRoot } from "../../../../site/build/paths.js";

/** What JupyterLab's dark theme sets, as far as outputs use it; source: theme-dark-extension 4, variables.css. */
const dark = `:root { --jp-layout-color0: #111111; --jp-content-font-color0: rgba(255, 255, 255, 1);
--jp-content-font-color1: rgba(255, 255, 255, 1); --jp-content-font-size1: 14px; --jp-content-line-height: 1.6;
--jp-content-font-family: system-ui, sans-serif; }
body { background: var(--jp-layout-color0); color: var(--jp-content-font-color1); }`;

/** A page with JupyterLab's renderer and dark theme, and nothing shown yet. */
export async function labPage(): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [inRoot("test/site/browser/jupyter/renderer.ts")],
    ...{ bundle: true, write: false, format: "iife", outdir: "out", logLevel: "error" },
    loader: { ".svg": "text" },
    define: { "process.env.NODE_ENV": '"production"', "process.env": "{}" },
  });
  const [script] = outputFiles.filter(({ path }) => path.endsWith(".js"));
  const css = readFileSync(inRoot("node_modules/@jupyterlab/rendermime/style/base.css"), "utf8");
  const text = script?.text.replaceAll("</script", "<\\/script") ?? "";
  return `<!doctype html><html><head><meta charset="utf-8"><link rel="icon" href="data:,">
<style>${css}${dark}</style></head><body data-jp-theme-light="false"><script>${text}</script></body></html>`;
}
