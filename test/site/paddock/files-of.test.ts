import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, expect, test } from "vitest";
import { filesOf } from "../../../site/commands/files-of.js";

const folder = mkdtempSync(join(tmpdir(), "rollbook-files-"));
afterEach(() => rmSync(folder, { recursive: true, force: true }));

test("a file that goes while it is asked for ends its own answer, and the others still come", async () => {
  const going = join(folder, "going.html");
  for (const name of ["going.html", "staying.html"]) writeFileSync(join(folder, name), name);
  const files = filesOf(folder);
  const server = createServer((request, response) => {
    if (request.url === "/going.html") response.on("pipe", () => rmSync(going));
    files(request, response);
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  const answer = (name: string) =>
    fetch(`http://127.0.0.1:${port}/${name}`).then((response) => response.text());
  await expect(answer("going.html")).rejects.toThrow();
  expect(await answer("staying.html")).toBe("staying.html");
  server.close();
});
