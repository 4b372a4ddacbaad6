import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";

/** One hash over the text of every file below the folders, in a fixed order, wherever the folders lie. */
export function hashFiles(folders: readonly string[]): string {
  const hash = createHash("sha256");
  const add = (folder: string, below: string): void => {
    const entries = readdirSync(`${folder}${below}`, { withFileTypes: true });
    for (const entry of entries.sort((a, b) => (a.name < b.name ? -1 : 1))) {
      const child = `${below}/${entry.name}`;
      if (entry.isDirectory()) {
        if (entry.name !== "node_modules") add(folder, child);
      } else if (!entry.name.startsWith(".")) {
        hash.update(`${child}\0`).update(readFileSync(`${folder}${child}`));
      }
    }
  };
  for (const folder of folders) add(folder, "");
  return hash.digest("hex");
}
