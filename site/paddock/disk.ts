import { type FileHandle, open } from "node:fs/promises";

/** A file that only grows, as far as a journal needs one. */
export interface Disk {
  read(): Promise<Buffer>;
  /** Adds bytes at the end; they are safe only after `sync`. */
  append(bytes: Buffer): Promise<void>;
  sync(): Promise<void>;
  /** Leaves the first so many bytes. */
  cut(length: number): Promise<void>;
  close(): Promise<void>;
}

/** A file of the machine; it is made where it is not there yet, readable by its owner alone. */
export async function fileOnDisk(path: string): Promise<Disk> {
  const file = await open(path, "a+", 0o600);
  await syncFolder(path);
  return {
    read: () => file.readFile(),
    append: (bytes) => appendAll(file, bytes),
    sync: () => file.datasync(),
    cut: (length) => file.truncate(length),
    close: () => file.close(),
  };
}

async function appendAll(file: FileHandle, bytes: Buffer): Promise<void> {
  let from = 0;
  while (from < bytes.length) from += (await file.write(bytes, from)).bytesWritten;
}

/** So that a file that was made now is there after the power was cut; some systems know no such thing. */
async function syncFolder(path: string): Promise<void> {
  try {
    const folder = await open(new URL(".", `file://${path}`), "r");
    await folder.sync().finally(() => folder.close());
  } catch (error) {
    if (!(error instanceof Error && "code" in error)) throw error;
  }
}
