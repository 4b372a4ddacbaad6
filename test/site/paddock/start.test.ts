import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import type { IncomingHttpHeaders } from "node:http";
import { request } from "node:https";
import { join } from "node:path";
import { text } from "node:stream/consumers";
import { afterAll, beforeAll, expect, it } from "vitest";
import { inRoot } from "../../../site/build/paths.js";
import { certificateFrom } from "../../../site/paddock/server.js";
import { startPaddock } from "../../../site/paddock/start.js";
import { event, reportOf, setUp } from "./paddock.js";
import { onDisk, post } from "./process.js";

mkdirSync(inRoot(".cache"), { recursive: true });
const own = mkdtempSync(inRoot(".cache/test-paddock-"));
const course = join(own, "course");
const [cert, key] = [join(own, "cert.pem"), join(own, "key.pem")];

function hasOpenssl(): boolean {
  try {
    execFileSync("openssl", ["version"], { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
}

beforeAll(() => {
  mkdirSync(course);
  writeFileSync(join(course, "workshop.html"), "<!doctype html><title>Workshop</title>");
});

afterAll(() => rmSync(own, { recursive: true, force: true }));

/** A certificate of one's own, as a club would make it for its laptop. */
function makeCertificate(): void {
  const names = "subjectAltName=IP:127.0.0.1,DNS:localhost";
  const made = ["-x509", "-newkey", "ec", "-pkeyopt", "ec_paramgen_curve:prime256v1", "-nodes"];
  const files = ["-keyout", key, "-out", cert, "-days", "2"];
  const about = ["-subj", "/CN=paddock", "-addext", names];
  execFileSync("openssl", ["req", ...made, ...files, ...about], { stdio: "ignore" });
}

interface Answered {
  readonly status: number | undefined;
  readonly headers: IncomingHttpHeaders;
  readonly body: string;
}

/** Asks as a browser does that trusts the certificate, and no other. */
const asked = (url: string, headers: Record<string, string> = {}, body?: object) =>
  new Promise<Answered>((resolve, reject) => {
    const method = body === undefined ? "GET" : "POST";
    const json = { "Content-Type": "application/json", ...headers };
    const sent = request(url, { ca: readFileSync(cert), method, headers: json }, (response) => {
      const { statusCode: status, headers } = response;
      void text(response).then((body) => resolve({ status, headers, body }), reject);
    });
    sent.once("error", reject);
    sent.end(body && JSON.stringify(body));
  });

it.runIf(hasOpenssl())(
  "serves course and day over https with a certificate of one's own",
  async () => {
    makeCertificate();
    const certificate = certificateFrom(cert, key);
    const folder = join(own, "secure");
    const at = await startPaddock({ folder, course, port: 0, address: "127.0.0.1", certificate });
    const { address, code, secret } = at.place;
    expect([address, at.local]).toEqual([
      expect.stringMatching(/^https:\/\/127\.0\.0\.1:\d+$/),
      expect.stringMatching(/^https:\/\/localhost:\d+$/),
    ]);
    for (const base of [address, at.local]) {
      const page = await asked(`${base}/workshop.html`, { Origin: base });
      expect([page.status, page.body]).toEqual([200, expect.stringContaining("Workshop")]);
      expect(page.headers["set-cookie"]).toEqual([expect.stringContaining("rollbook-paddock=1")]);
    }
    const joined = await asked(`${address}/paddock/join`, {}, { code, name: "Ada" });
    const token = { Authorization: `Bearer ${JSON.parse(joined.body).token}` };
    const entries = reportOf("phoneaaa", "Ada");
    const filed = await asked(`${address}/paddock/entries`, token, { entries });
    expect(JSON.parse(filed.body)).toEqual({ filed: entries.map(({ id }) => id), refused: [] });
    expect(onDisk(folder)).toEqual(entries);
    expect(
      (await asked(`${address}/workshop.html`, { Origin: "https://evil.example" })).status,
    ).toBe(421);
    expect((await asked(`${address}/paddock/desk`, {}, { secret })).status).toBe(200);
    await expect(fetch(`${address}/workshop.html`)).rejects.toThrow(); // not trusted: not shown
    await expect(fetch(`${address.replace("https", "http")}/workshop.html`)).rejects.toThrow();
    await at.stop();
  },
);

const linux = process.platform === "linux"; // it answers to all of 127.0.0.0/8

it.runIf(linux)(
  "a laptop that comes back under another address is the same day, and takes what waited once",
  async () => {
    const folder = join(own, "moved");
    const before = await startPaddock({ folder, course, port: 0, address: "127.0.0.1" });
    const first = { ...before.place, address: before.place.address };
    await post(first.address, "entries", first.secret, { entries: [setUp, event] });
    const { fields } = await post(first.address, "join", "", { code: first.code, name: "Ada" });
    const token = String(fields.token);
    await post(first.address, "entries", token, { entries: reportOf("phoneaaa", "Ada", 1) });
    await before.stop();

    const waited = reportOf("phoneaaa", "Ada", 2);
    const again = await startPaddock({ folder, course, port: 0, address: "127.0.0.2" });
    const { address, code, secret } = again.place;
    expect(address).toMatch(/^http:\/\/127\.0\.0\.2:/);
    expect([code, secret]).toEqual([first.code, first.secret]); // codes on the wall stay good
    const handedOver = await post(address, "entries", secret, { entries: waited }); // by code or file
    expect(handedOver.fields).toMatchObject({ refused: [] });
    const byPhone = await post(address, "entries", token, { entries: waited }); // which joined before
    expect(byPhone).toMatchObject({ status: 200, fields: { refused: [] } });
    const joined = await post(address, "join", "", { code, name: "Ada" }); // as another page sees it
    const more = reportOf("phonebbb", "Ada", 3);
    await post(address, "entries", String(joined.fields.token), { entries: more });
    const all = [setUp, event, ...reportOf("phoneaaa", "Ada", 1), ...waited, ...more];
    expect(onDisk(folder)).toEqual(all);
    await again.stop();
  },
);
