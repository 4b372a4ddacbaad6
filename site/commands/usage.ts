import { accessSync, constants, statSync, writeFileSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { type ParseArgsConfig, parseArgs } from "node:util";
import { CourseError } from "../build/notebook.js";

/** Something that was asked for on the command line and cannot be given: one sentence, exit code 2. */
export class UsageError extends CourseError {}

/** What was asked of a command, or its usage where it asks for something else. */
export function optionsOf<T extends ParseArgsConfig>(config: T): ReturnType<typeof parseArgs<T>> {
  try {
    return parseArgs(config);
  } catch (error) {
    if (!(error instanceof TypeError) || !("code" in error)) throw error;
    const [sentence = ""] = error.message.split(/[.\n]/, 1);
    throw new UsageError(`${sentence}; --help lists the options.`);
  }
}

/** A path as the person who typed it means it: npm itself works at the top of the repository. */
export const fromCaller = (path: string, folder = process.env.INIT_CWD ?? "."): string =>
  resolve(folder, path);

/** The path that `--out` names, once it is sure that a file can be written there. */
export function outFrom(given: string): string {
  const out = fromCaller(given);
  writing(out, () => {
    if (statSync(out, { throwIfNoEntry: false })?.isDirectory()) throw errorOf("EISDIR");
    if (!statSync(dirname(out)).isDirectory()) throw errorOf("ENOTDIR");
    accessSync(dirname(out), constants.W_OK);
  });
  return out;
}

/** Writes the file that `--out` names. */
export const writeOut = (out: string, text: string): void =>
  writing(out, () => writeFileSync(out, text));

function writing(out: string, work: () => void): void {
  try {
    work();
  } catch (error) {
    throw new UsageError(`--out is ${out}, which cannot be written (${codeOf(error)}).`);
  }
}

const errorOf = (code: string): Error => Object.assign(new Error(code), { code });

/** The code of an error of the system; any other error is a fault of the program and goes on. */
export function codeOf(error: unknown): string {
  const { code } = error as { code?: unknown };
  if (typeof code !== "string") throw error;
  return code;
}
