import { type ChildProcess, spawn } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { inRoot } from "../../../site/build/paths.js";
import { freePort } from "../../../site/commands/free-port.js";
import { nginxPath } from "../../../site/commands/needs.js";
import { chapters, useBrowser, withWorker } from "./browser.js";

const nginx = nginxPath();
const why = nginx ? "" : " (skipped: nginx is not installed; on Debian, apt-get install nginx)";
const { open } = useBrowser();

/** The configuration that docs/hosting.md shows, on a port and in a folder of this test. */
function configuration(folder: string, port: number): string {
  const [, shown = ""] =
    /```nginx\n([\s\S]*?)```/.exec(readFileSync(inRoot("docs/hosting.md"), "utf8")) ?? [];
  const server = shown
    .replace("listen 80;", `listen 127.0.0.1:${port};`)
    .replace("root /srv/www;", `root ${folder}/www;`);
  const scratch = ["client_body", "proxy", "fastcgi", "uwsgi", "scgi"].map(
    (name) => `${name}_temp_path ${folder}/${name};`,
  );
  return `daemon off; master_process off; pid ${folder}/pid; error_log ${folder}/error.log;
events {}
http { include /etc/nginx/mime.types; access_log off; ${scratch.join(" ")}
${server}}`;
}

describe.skipIf(!nginx)(`the course under nginx as docs/hosting.md shows it${why}`, () => {
  let folder = "";
  let host: ChildProcess;
  let url = "";
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), "rollbook-nginx-"));
    mkdirSync(`${folder}/www`);
    cpSync(process.env.DIST ?? inRoot("dist"), `${folder}/www/rollbook`, { recursive: true });
    writeFileSync(`${folder}/www/rollbook/.hidden`, "no");
    const port = await freePort();
    writeFileSync(`${folder}/nginx.conf`, configuration(folder, port));
    url = `http://127.0.0.1:${port}/rollbook/`;
    const options = ["-p", folder, "-c", `${folder}/nginx.conf`, "-e", `${folder}/error.log`];
    host = spawn(nginx ?? "", options, { stdio: "inherit" });
    await vi.waitFor(async () => expect((await fetch(url)).status).toBe(200), 10_000);
  });
  afterAll(() => {
    host.kill();
    rmSync(folder, { recursive: true, force: true });
  });

  it("asks browsers to ask again, and answers in a few bytes when nothing changed", async () => {
    for (const file of ["", "index.html", "course.js", "course.css", "sw.js", "icon.svg"]) {
      const first = await fetch(url + file);
      expect(first.headers.get("cache-control"), file).toBe("no-cache");
      const tag = first.headers.get("etag") ?? "";
      expect(tag, file).not.toBe("");
      const again = await fetch(url + file, { headers: { "If-None-Match": tag } });
      expect(again.status, file).toBe(304);
    }
  });

  it("sends text compressed, with its type and the headers that only a host can send", async () => {
    for (const [file, type] of [
      ["index.html", "text/html"],
      ["course.js", "application/javascript"],
      ["course.css", "text/css"],
    ]) {
      const { headers } = await fetch(url + file);
      expect(headers.get("content-encoding"), file).toBe("gzip");
      expect(headers.get("content-type"), file).toMatch(new RegExp(`^${type}`));
      expect(headers.get("x-content-type-options")).toBe("nosniff");
      expect(headers.get("referrer-policy")).toBe("no-referrer");
      expect(headers.get("content-security-policy")).toBe("frame-ancestors 'self'");
    }
  });

  it("serves names without ending, and neither hidden files nor what is not there", async () => {
    const status = async (path: string) => (await fetch(url + path)).status;
    expect(await status(chapters[0] ?? "")).toBe(200);
    expect(await status(".hidden")).toBe(404);
    expect(await status("nothing.html")).toBe(404);
    const deep = await fetch(`${url}no/such/place`);
    expect(deep.status).toBe(404);
    expect(await deep.text()).toContain("<h1>There is no page at this address</h1>");
  });

  it("is live below its path, and stays when the host is gone", async () => {
    const { page, errors } = await open(`${url}${chapters[0]}.html`, withWorker);
    await page.locator(".figure[data-live]").first().waitFor();
    await page.locator(".offline", { hasText: "Ready without network." }).waitFor();
    host.kill();
    await page.goto(`${url}${chapters[1]}`);
    await page.locator(".figure[data-live]").first().waitFor();
    expect(errors).toEqual([]);
  });
});
