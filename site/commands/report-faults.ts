import { CourseError } from "../build/notebook.js";
import { forTerminal } from "./for-terminal.js";
import { UsageError } from "./usage.js";

/**
 * How a command ends that failed: with a sentence and 2 where something was asked for wrongly, with
 * its own words and 1 for a fault of the course, with its trace and 1 for any other.
 */
export const endOf = (error: unknown): { said: unknown; code: 1 | 2 } => ({
  said: error instanceof CourseError ? forTerminal(error.message) : error,
  code: error instanceof UsageError ? 2 : 1,
});

/** Runs a command, and says how it ended where it failed. */
export async function reportFaults(command: () => void | Promise<void>): Promise<void> {
  try {
    await command();
  } catch (error) {
    const { said, code } = endOf(error);
    console.error(said);
    process.exitCode = code;
  }
}
