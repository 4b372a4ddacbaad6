import { CourseError } from "../build/notebook.js";
import { forTerminal } from "./for-terminal.js";
import { UsageError } from "./usage.js";

/**
 * Runs a command. What was asked for wrongly ends it with a sentence and 2, a fault of the course with
 * its own words and 1, any other with its trace and 1.
 */
export async function reportFaults(command: () => void | Promise<void>): Promise<void> {
  try {
    await command();
  } catch (error) {
    console.error(error instanceof CourseError ? forTerminal(error.message) : error);
    process.exitCode = error instanceof UsageError ? 2 : 1;
  }
}
