/** Larger than this is no hand-over, characters. */
const LONGEST = 2_000_000;

/** A text as letters that fit into a link, squeezed where the browser can. */
export async function pack(text: string): Promise<string> {
  const bytes = new TextEncoder().encode(text);
  if (typeof CompressionStream === "undefined") return `p${toLetters(bytes)}`;
  const squeezed = new Blob([bytes]).stream().pipeThrough(new CompressionStream("deflate-raw"));
  return `z${toLetters(new Uint8Array(await new Response(squeezed).arrayBuffer()))}`;
}

/** The text again; nothing where the letters hold none, or more than any hand-over. */
export async function unpack(packed: string): Promise<string | undefined> {
  try {
    const bytes = fromLetters(packed.slice(1));
    if (packed.startsWith("p")) return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    return packed.startsWith("z") ? await unsqueezed(bytes) : undefined;
  } catch {
    return undefined;
  }
}

/** Reads piece by piece, so that a small link cannot fill the memory. */
async function unsqueezed(bytes: Uint8Array<ArrayBuffer>): Promise<string | undefined> {
  const pieces = new Blob([bytes])
    .stream()
    .pipeThrough(new DecompressionStream("deflate-raw"))
    .pipeThrough(new TextDecoderStream("utf-8", { fatal: true }))
    .getReader();
  let text = "";
  for (;;) {
    const { done, value } = await pieces.read();
    if (done) return text;
    text += value;
    if (text.length <= LONGEST) continue;
    await pieces.cancel();
    return undefined;
  }
}

/** Base64 with letters that a link may have – RFC 4648, section 5. */
function toLetters(bytes: Uint8Array): string {
  const binary = Array.from(bytes, (byte) => String.fromCharCode(byte)).join("");
  return btoa(binary).replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/, "");
}

function fromLetters(letters: string): Uint8Array<ArrayBuffer> {
  const binary = atob(letters.replaceAll("-", "+").replaceAll("_", "/"));
  return Uint8Array.from(binary, (letter) => letter.charCodeAt(0));
}
