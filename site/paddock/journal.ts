import type { Disk } from "./disk.js";

/** What stood in a journal when it was opened. */
export interface Opened {
  readonly journal: Journal;
  /** One value for each line. */
  readonly values: readonly unknown[];
  /** Bytes of a last line that was torn, and are gone. */
  readonly torn: number;
  /** Lines that cannot be read; they stay where they are. */
  readonly unreadable: number;
}

/** The disk did not take what was added; nothing of it is kept. */
export class DiskRefused extends Error {}

/** Lines that wait for the disk, and whoever waits for them. */
interface Waiting {
  readonly text: string;
  readonly done: () => void;
  readonly failed: (error: unknown) => void;
}

const LINE_END = 0x0a;

/**
 * Values one by one on the lines of a file that only grows. What was added is on the disk once the
 * promise is kept; many that come at once share one writing. What a disk refuses leaves no trace.
 */
export class Journal {
  readonly #disk: Disk;
  /** Bytes that are whole lines and safe. */
  #length: number;
  #waiting: Waiting[] = [];
  #busy: Promise<void> | undefined;
  /** Whether bytes of a failed writing may stand behind the safe ones. */
  #dirty = false;

  private constructor(disk: Disk, length: number) {
    this.#disk = disk;
    this.#length = length;
  }

  /** Opens a journal; a last line that was torn when the power went is taken off. */
  static async open(disk: Disk): Promise<Opened> {
    const bytes = await disk.read();
    const length = bytes.lastIndexOf(LINE_END) + 1;
    if (length < bytes.length) {
      await disk.cut(length);
      await disk.sync();
    }
    const lines = bytes.subarray(0, length).toString("utf8").split("\n").slice(0, -1);
    const values = lines.flatMap(parsed);
    return {
      journal: new Journal(disk, length),
      values,
      torn: bytes.length - length,
      unreadable: lines.length - values.length,
    };
  }

  /** Adds values; the promise is kept when they are safe, and broken when the disk refuses them. */
  add(values: readonly unknown[]): Promise<void> {
    const text = values.map((value) => `${JSON.stringify(value)}\n`).join("");
    return new Promise((done, failed) => {
      this.#waiting.push({ text, done, failed });
      this.#busy ??= this.#drain();
    });
  }

  async #drain(): Promise<void> {
    while (this.#waiting.length > 0) {
      const now = this.#waiting.splice(0);
      try {
        await this.#write(Buffer.from(now.map(({ text }) => text).join("")));
        for (const { done } of now) done();
      } catch (cause) {
        const why = cause instanceof Error ? cause.message : String(cause);
        for (const { failed } of now) failed(new DiskRefused(why, { cause }));
      }
    }
    this.#busy = undefined;
  }

  async #write(bytes: Buffer): Promise<void> {
    if (this.#dirty) await this.#disk.cut(this.#length);
    this.#dirty = true;
    await this.#disk.append(bytes);
    await this.#disk.sync();
    this.#dirty = false;
    this.#length += bytes.length;
  }

  /** Waits for what is under way and closes the file. */
  async close(): Promise<void> {
    await this.#busy;
    await this.#disk.close();
  }
}

function parsed(line: string): unknown[] {
  try {
    return [JSON.parse(line)];
  } catch {
    return [];
  }
}
