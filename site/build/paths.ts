import { fileURLToPath } from "node:url";

export const root = fileURLToPath(new URL("../..", import.meta.url)).replace(/[\\/]$/, "");

/** A path below the repository. */
export const inRoot = (path: string): string => `${root}/${path}`;
