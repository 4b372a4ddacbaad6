import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Disk } from "../../../site/paddock/disk.js";
import { Journal } from "../../../site/paddock/journal.js";

/** A disk of which only what was synced is sure to be left when the power goes. */
class FakeDisk implements Disk {
  bytes = Buffer.alloc(0);
  synced = 0;
  /** Bytes that it takes before it is full. */
  room = Infinity;

  read = async () => this.bytes;
  append = async (more: Buffer) => {
    const taken = more.subarray(0, Math.max(0, this.room - this.bytes.length));
    this.bytes = Buffer.concat([this.bytes, taken]);
    if (taken.length < more.length) throw Object.assign(new Error("full"), { code: "ENOSPC" });
  };
  sync = async () => {
    this.synced = this.bytes.length;
  };
  cut = async (length: number) => {
    this.bytes = this.bytes.subarray(0, length);
    this.synced = Math.min(this.synced, length);
  };
  close = async () => {};

  /** The power goes: of what was not synced, so many bytes are left, or noughts in their place. */
  crash(left: number, noughts: boolean): void {
    const kept = this.synced + Math.min(left, this.bytes.length - this.synced);
    const tail = this.bytes.subarray(this.synced, kept);
    const end = noughts ? Buffer.alloc(tail.length) : tail;
    this.bytes = Buffer.concat([this.bytes.subarray(0, this.synced), end]);
  }
}

const opened = (disk: Disk) => Journal.open(disk);

describe("a journal", () => {
  it("gives back what was added, in its order", async () => {
    const disk = new FakeDisk();
    const { journal } = await opened(disk);
    await Promise.all([journal.add([{ a: 1 }, { b: "two\nlines" }]), journal.add([3])]);
    expect((await opened(disk)).values).toEqual([{ a: 1 }, { b: "two\nlines" }, 3]);
  });

  it("takes a torn last line off, wherever it was torn, and goes on after it", async () => {
    const disk = new FakeDisk();
    const { journal } = await opened(disk);
    for (const value of ["one", "zwölf", "three"]) await journal.add([value]);
    const whole = disk.bytes;
    for (let length = 0; length <= whole.length; length++) {
      const torn = new FakeDisk();
      torn.bytes = whole.subarray(0, length);
      const again = await opened(torn);
      const lines = whole.subarray(0, length).toString().split("\n").length - 1;
      expect(again.values).toEqual(["one", "zwölf", "three"].slice(0, lines));
      await again.journal.add(["next"]);
      expect((await opened(torn)).values.at(-1)).toBe("next");
    }
  });

  it("loses nothing that it answered and doubles nothing, whenever the power goes (300 days)", async () => {
    const day = fc.array(
      fc.record({ batch: fc.integer({ min: 1, max: 4 }), left: fc.nat(60), noughts: fc.boolean() }),
      { minLength: 1, maxLength: 8 },
    );
    await fc.assert(
      fc.asyncProperty(day, async (crashes) => {
        const disk = new FakeDisk();
        const answered: number[] = [];
        let number = 0;
        for (const { batch, left, noughts } of crashes) {
          const { journal } = await opened(disk);
          for (let i = 0; i < batch; i++) {
            const value = ++number;
            await journal.add([value]);
            answered.push(value);
          }
          await disk.append(Buffer.from(`${++number}\n${++number}\n`)); // under way, not synced
          disk.crash(left, noughts);
        }
        const { values } = await opened(disk);
        const numbers = values.filter((value) => typeof value === "number");
        expect(numbers).toEqual(expect.arrayContaining(answered));
        expect(new Set(numbers).size).toBe(numbers.length);
      }),
      { numRuns: 300 },
    );
  });

  it("refuses while the disk is full, leaves no trace of it, and goes on when there is room", async () => {
    const disk = new FakeDisk();
    const { journal } = await opened(disk);
    await journal.add(["kept"]);
    disk.room = disk.bytes.length + 3;
    await expect(journal.add(["refused"])).rejects.toThrow("full");
    await expect(journal.add(["refused too"])).rejects.toThrow("full");
    disk.room = Infinity;
    await journal.add(["after"]);
    expect((await opened(disk)).values).toEqual(["kept", "after"]);
  });

  it("a line that cannot be read costs that line alone", async () => {
    const disk = new FakeDisk();
    disk.bytes = Buffer.from('1\n{"broken\n3\n');
    const { values, unreadable } = await opened(disk);
    expect([values, unreadable]).toEqual([[1, 3], 1]);
  });
});
