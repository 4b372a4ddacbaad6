import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { get } from "node:http";
import { connect } from "node:net";
import { join } from "node:path";
import { canonical, type LogEntry } from "@rollbook/lib";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { inRoot } from "../../../site/build/paths.js";
import { event, reportOf, setUp } from "./paddock.js";
import { killed, listen, onDisk, Paddocks, post, type Running } from "./process.js";

mkdirSync(inRoot(".cache"), { recursive: true });
const own = mkdtempSync(inRoot(".cache/test-paddock-"));
const [folder, course] = [join(own, "day"), join(own, "course")];

let paddocks: Paddocks;
const start = (): Promise<Running> => paddocks.start(folder, course);

beforeAll(async () => {
  paddocks = await Paddocks.in(own);
  mkdirSync(course);
  writeFileSync(join(course, "workshop.html"), "<!doctype html><title>Workshop</title>");
});

afterAll(() => {
  paddocks.killAll();
  rmSync(own, { recursive: true, force: true });
});

describe("a desk whose machine is killed", () => {
  it("in the midst of writing, twenty times, loses nothing that it answered and doubles nothing", async () => {
    let at = await start();
    const { secret } = at;
    await post(at.address, "entries", secret, { entries: [setUp, event] });
    const written: LogEntry[] = [];
    const answered = new Set<string>();

    /** Each of six phones files one report after the other, again and again until it is answered. */
    const phone = async (name: string, until: () => boolean) => {
      for (let number = 1; !until(); number++) {
        const entries = reportOf(name, "Ada", number);
        written.push(...entries);
        for (let done = false; !done; ) {
          const { status } = await post(at.address, "entries", secret, { entries }).catch(() => ({
            status: 0,
          }));
          done = status === 200;
          if (!done) await new Promise((again) => setTimeout(again, 5));
        }
        for (const { id } of entries) answered.add(id);
      }
    };
    let kills = 0;
    const phones = ["aaaaaaaa", "bbbbbbbb", "cccccccc", "dddddddd", "eeeeeeee", "ffffffff"];
    const all = Promise.all(phones.map((name) => phone(name, () => kills === 20)));
    for (; kills < 20; kills++) {
      const before = answered.size;
      await expect.poll(() => answered.size, { interval: 1 }).toBeGreaterThan(before + kills);
      await killed(at);
      at = await start();
    }
    await all;

    const there = onDisk(folder);
    const contents = there.map(canonical);
    expect(new Set(contents).size).toBe(contents.length);
    expect(new Set(contents)).toEqual(new Set([setUp, event, ...written].map(canonical)));
    expect(answered.size).toBe(written.length);
    at.child.kill("SIGKILL");
  });
});

describe("over the network", () => {
  it("the desk hears at once what a phone files, and a phone nothing of what others say", async () => {
    const { address, code, secret, child } = await start();
    const { fields } = await post(address, "join", "", { code, name: "Bela" });
    const token = String(fields.token);
    const first = await listen(address, secret);
    const second = await listen(address, token);
    await first.until(({ event }) => event === "caught-up");
    await second.until(({ event }) => event === "caught-up");
    const report = reportOf("gggggggg", "Bela");
    await post(address, "entries", token, { entries: report });
    const heard = await first.until(({ data }) => JSON.stringify(data).includes("gggggggg-2"));
    expect(heard.event).toBe("entries");
    await second.until(({ data }) => JSON.stringify(data).includes("gggggggg-2"));
    expect(first.entries().some(({ kind }) => kind === "set-up")).toBe(true);
    const told = second.entries().filter(({ kind }) => kind === "report" || kind === "set-up");
    expect(told.map(({ author }) => author)).toEqual(["Bela"]); // Ada's are for the desk alone
    for (const one of [first, second]) one.stop();
    child.kill("SIGKILL");
  });

  it("goes on for all others while some send half a message, and some listen and never read", async () => {
    const { address, secret, child } = await start();
    const { host, hostname, port } = new URL(address);
    const sockets = Array.from({ length: 55 }, (_, i) => {
      const socket = connect(Number(port), hostname);
      socket.on("error", () => {}); // it is cut off in the end
      const head =
        i < 50
          ? `POST /paddock/entries HTTP/1.1\r\nHost: ${host}\r\nContent-Length: 1000\r\n\r\n{`
          : `GET /paddock/entries?after=0 HTTP/1.1\r\nHost: ${host}\r\nAuthorization: Bearer ${secret}\r\n\r\n`;
      socket.pause();
      socket.write(head);
      return socket;
    });
    const words = "slow ".repeat(400); // 0.8 MB in all
    for (let message = 0; message < 4; message++) {
      const entries = Array.from({ length: 100 }, (_, i) =>
        reportOf("slowaaaa", "Ada", message * 100 + i + 1),
      ).flat();
      const long = entries.map((entry) =>
        entry.kind === "report" ? { ...entry, report: { ...entry.report, words } } : entry,
      );
      expect((await post(address, "entries", secret, { entries: long })).status).toBe(200);
    }
    const reader = await listen(address, secret);
    await reader.until(({ data }) =>
      ((data as { entries?: LogEntry[] }).entries ?? []).some(({ id }) => id === "slowaaaa-800"),
    );
    reader.stop();
    for (const socket of sockets) socket.destroy();
    child.kill("SIGKILL");
  });

  it("refuses what is asked of another host or by another site's page", async () => {
    const { address, child } = await start();
    const status = (headers: Record<string, string>) =>
      new Promise<number | undefined>((resolve) =>
        get(`${address}/workshop.html`, { headers }, (response) => {
          response.resume();
          resolve(response.statusCode);
        }),
      );
    expect(await status({})).toBe(200);
    expect(await status({ Host: "evil.example" })).toBe(421);
    expect(await status({ Origin: "http://evil.example" })).toBe(421);
    expect(await status({ Origin: address })).toBe(200);
    child.kill("SIGKILL");
  });
});
