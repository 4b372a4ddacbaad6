import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";

/** One hash over the text of every file below the folders, in a fixed order. */
export function hashFiles(paths: readonly string[]): string {
  const hash = createHash("sha256");
  const add = (path: string): void => {
    const entries = readdirSync(path, { withFileTypes: true });
    for (const entry of entries.sort((a, b) => (a.name < b.name ? -1 : 1))) {
      const child = `${path}/${entry.name}`;
      if (entry.isDirectory()) {
        if (entry.name !== "node_modules") add(child);
      } else if (!entry.name.startsWith(".")) {
        hash.update(child).update(readFileSync(child));
      }
    }
  };
  for (const path of paths) add(path);
  return hash.digest("hex");
}
