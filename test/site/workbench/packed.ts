import { prefix } from "../../../site/workbench/model/link-prefix.js";

/** The end of a link that holds any value, whatever a page would have refused to put there. */
export async function packed(value: unknown): Promise<string> {
  const plain = new Blob([JSON.stringify(value)]).stream();
  const stream = plain.pipeThrough(new CompressionStream("deflate-raw") as never);
  const bytes = Buffer.from(await new Response(stream as never).arrayBuffer());
  return prefix + bytes.toString("base64url");
}
