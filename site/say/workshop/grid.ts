/** What the grid says in which the desk types slips. */
export const grid = {
  title: "Type in slips",
  help: "One row a driver, by keyboard alone: the first letters choose (r2: the rear, clearly; f1: the front a little; ?: cannot tell), Tab goes on, Enter files the row and goes to the next driver. What stands in another report on the same place is replaced by it; both stay in the log.",
  table: (run: number) => `Slips of run ${run}`,
  driver: "Driver",
  file: "File",
  fileOf: (driver: string) => `File the slip of ${driver}`,
  choose: "–",
  cannotTell: "cannot tell",
  typedCannotTell: "? cannot tell",
  typed: (sign: number, points: number, balance: string) =>
    sign === 0 ? "0" : `${sign > 0 ? "f" : "r"}${points} (${balance})`,
  of: (what: string, driver: string) => `${what}, ${driver}`,
  filed: (driver: string, line: string) => `${driver}: ${line}. Filed.`,
  empty: (driver: string) => `${driver}: choose where, when and what it does first.`,
  already: (count: number) => (count === 1 ? "1 is in" : `${count} are in`),
  double: "this place is in already",
} as const;
