import {
  existsSync,
  mkdirSync,
  readFileSync,
  renameSync,
  rmdirSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { homedir } from "node:os";
import { dirname } from "node:path";
import { inRoot } from "../../build/paths.js";

type Environment = Readonly<Record<string, string | undefined>>;

/** The user's own folder of Jupyter's data; source: jupyter_core, "Common Directories and File Locations". */
export function dataFolder(env: Environment, platform: NodeJS.Platform, home = homedir()): string {
  if (env.JUPYTER_DATA_DIR) return env.JUPYTER_DATA_DIR;
  if (platform === "darwin") return `${home}/Library/Jupyter`;
  if (platform === "win32") return `${env.APPDATA ?? `${home}/AppData/Roaming`}/jupyter`;
  return `${env.XDG_DATA_HOME || `${home}/.local/share`}/jupyter`;
}

/** Where notebooks look for the kernel that they name. */
export const specFile = (data: string): string => `${data}/kernels/tslab/kernel.json`;

const before = (file: string): string => `${file}.before-rollbook`;

/** A kernel that is found wherever the front end was started: all its paths are whole. */
const specText = (): string => {
  const tslab = inRoot("node_modules/tslab/bin/tslab");
  const spec = {
    argv: [process.execPath, tslab, "kernel", "--config-path", "{connection_file}"],
    display_name: "TypeScript",
    language: "typescript",
    metadata: { rollbook: true },
  };
  return `${JSON.stringify(spec, null, 1)}\n`;
};

/** Whose the kernel is that is there now. */
export type Present = "none" | "ours" | "other";

export function presentSpec(file: string): Present {
  if (!existsSync(file)) return "none";
  try {
    return JSON.parse(readFileSync(file, "utf8")).metadata?.rollbook === true ? "ours" : "other";
  } catch {
    return "other";
  }
}

/** Writes the kernel; one of somebody else's is put aside. */
export function writeSpec(file: string): void {
  mkdirSync(dirname(file), { recursive: true });
  if (presentSpec(file) === "other") renameSync(file, before(file));
  writeFileSync(file, specText());
}

/** Takes the kernel away again and puts back what was put aside; false where there is none of ours. */
export function removeSpec(file: string): boolean {
  if (presentSpec(file) !== "ours") return false;
  rmSync(file);
  if (existsSync(before(file))) renameSync(before(file), file);
  else removeIfEmpty(dirname(file));
  return true;
}

/** A folder that somebody else put something into stays. */
function removeIfEmpty(folder: string): void {
  try {
    rmdirSync(folder);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "ENOTEMPTY") throw error;
  }
}
