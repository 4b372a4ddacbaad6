import { CourseError } from "../build/notebook.js";

/** Runs a command; a fault of the course ends it with its own words, any other with its trace. */
export async function reportFaults(command: () => Promise<void>): Promise<void> {
  try {
    await command();
  } catch (error) {
    console.error(error instanceof CourseError ? error.message : error);
    process.exitCode = 1;
  }
}
