import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { randomLetters, randomToken } from "./secrets.js";

/** The day's code and the desk's secret: they stay the same however often the command is started. */
export interface KeptPlace {
  readonly code: string;
  readonly secret: string;
}

const CODE = /^[a-z2-9]{6}$/;

/** Reads them from the folder; where they are not there, they are made and kept, for the owner alone. */
export function keptPlace(folder: string): KeptPlace {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const path = join(folder, "codes.json");
  const known = read(path);
  if (known !== undefined) return known;
  const made = { code: randomLetters(6), secret: randomToken() };
  writeFileSync(path, `${JSON.stringify(made, null, 1)}\n`, { mode: 0o600 });
  return made;
}

function read(path: string): KeptPlace | undefined {
  try {
    const { code, secret } = JSON.parse(readFileSync(path, "utf8"));
    const sound = CODE.test(code) && typeof secret === "string" && secret.length >= 20;
    return sound ? { code, secret } : undefined;
  } catch {
    return undefined;
  }
}
