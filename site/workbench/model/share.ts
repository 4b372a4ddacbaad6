/** Edited cells in the end of a link: `#edited=` and deflated JSON in letters that links keep. */

import { prefix } from "./link-prefix.js";

export type Edits = Readonly<Record<string, string>>;

export { prefix };
export const longestLinkEnd = 16_000; // characters
const longestUnpacked = 400_000; // characters

const toLetters = (bytes: Uint8Array): string =>
  btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""))
    .replace(/\+/g, "-")
    .replace(/\//g, "_")
    .replace(/=+$/, "");

const fromLetters = (letters: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(letters.replace(/-/g, "+").replace(/_/g, "/")), (letter) =>
    letter.charCodeAt(0),
  );

/** All bytes of a stream; one that gives more than the limit is cut off, whatever it still holds. */
async function bytesOf(
  stream: ReadableStream<Uint8Array>,
  limit: number,
): Promise<Uint8Array<ArrayBuffer>> {
  const reader = stream.getReader();
  const parts: Uint8Array[] = [];
  let size = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    size += value.length;
    if (size > limit) {
      await reader.cancel();
      throw new RangeError("too much");
    }
    parts.push(value);
  }
  return new Uint8Array(await new Blob(parts as BlobPart[]).arrayBuffer());
}

const through = (
  bytes: Uint8Array<ArrayBuffer>,
  way: CompressionStream | DecompressionStream,
): ReadableStream<Uint8Array> =>
  new Blob([bytes]).stream().pipeThrough(way as ReadableWritablePair<Uint8Array, BufferSource>);

/** The end of a link that opens these edits; undefined where it would be too long. */
export async function linkEndOf(edits: Edits): Promise<string | undefined> {
  const plain = new TextEncoder().encode(JSON.stringify(edits)) as Uint8Array<ArrayBuffer>;
  if (plain.length > longestUnpacked) return undefined;
  const packed = await bytesOf(
    through(plain, new CompressionStream("deflate-raw")),
    plain.length + 99,
  );
  const end = prefix + toLetters(packed);
  return end.length <= longestLinkEnd ? end : undefined;
}

/** Edits as a record of texts by cell; undefined where it is anything else. */
export function asEdits(value: unknown): Edits | undefined {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return undefined;
  const entries = Object.entries(value);
  return entries.every(([, text]) => typeof text === "string") ? (value as Edits) : undefined;
}

/** The edits that a link brings; undefined where it cannot be read. */
export async function editsFrom(hash: string): Promise<Edits | undefined> {
  const letters = hash.slice(prefix.length);
  if (hash.length > longestLinkEnd || !/^[\w-]+$/.test(letters)) return undefined;
  try {
    const stream = through(fromLetters(letters), new DecompressionStream("deflate-raw"));
    const plain = await bytesOf(stream, longestUnpacked);
    return asEdits(JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(plain)));
  } catch {
    return undefined;
  }
}
