/** What is said of a table of reports that somebody makes by hand. */
export const reportTable = {
  title: "What a table of reports looks like",
  help: "One line for each place of the lap that a driver reports on. The first line names the columns, in any order; commas, semicolons or tabs stand between cells, and a cell that has one of them in it stands in quotes. A line that says nothing but driver and run is passed over; one that cannot be read is refused with its number, and the others can be taken in.",
  column: "Column",
  holds: "What stands in it",
  needed: (what: string) => `${what} Needed.`,
  driver: (names: string) =>
    names === ""
      ? "A driver of the day, in any capitals."
      : `A driver of the day, in any capitals: ${names}.`,
  run: (most: number) =>
    `The number of the run in the day${most > 0 ? `, 1 to ${most}` : ""}; or its entry in the log, then without the driver.`,
  corner: (names: string) =>
    names === "" ? "The name of the corner." : `The name of the corner: ${names}, or another.`,
  oneOf: (values: string) => `One of: ${values}.`,
  balance: (least: number, most: number) =>
    `A whole number from ${least} to ${most}: above 0 the front slides first, below 0 the rear, 0 neither. 1 can be felt, 2 is clear, 3 cannot be driven around.`,
  words: "In the driver’s words.",
  saved: "Columns of a table that was saved here (id, at, author, replaces, setUp) may stay.",
  noDay: "No day is here yet: take it in or open it under Plan first, so that runs are found.",
  save: "Save a table to fill in (CSV)",
  name: "rollbook-reports-to-fill-in.csv",
} as const;
