/** What a file needs to become one of the next version. */
export type Migration = (file: Readonly<Record<string, unknown>>) => Record<string, unknown>;

/** Version written by this workbook. */
export const CAR_FILE_VERSION = 1;

/** The step from each older version to the next; there is none older than 1 yet. */
const steps: Readonly<Record<number, Migration>> = {};

/**
 * Brings the content of a car file to the present version.
 *
 * @param migrations - steps by the version they start from
 * @param present - version to reach
 * @returns the content without its version and a note for each step, or a fault
 */
export function migrate(
  file: Readonly<Record<string, unknown>>,
  migrations: Readonly<Record<number, Migration>> = steps,
  present = CAR_FILE_VERSION,
): { content: Record<string, unknown>; notes: string[] } | { fault: string } {
  const { version = present, ...rest } = file;
  if (typeof version !== "number" || !Number.isInteger(version) || version < 1 || version > present)
    return {
      fault: `version is ${JSON.stringify(version)} but must be a whole number from 1 to ${present}.`,
    };
  let content: Record<string, unknown> = rest;
  const notes: string[] = [];
  for (let from = version; from < present; from++) {
    content = migrations[from]?.(content) ?? content;
    notes.push(`The file was brought from version ${from} to version ${from + 1}.`);
  }
  return { content, notes };
}
