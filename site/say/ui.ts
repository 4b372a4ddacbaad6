/** What the parts that pages are made of say of themselves. */
export const words = {
  takeBack: "Take it back",
  leaveWall: "Back",
  numberFault: (label: string, ends: readonly string[], unit: string, whole: boolean) =>
    `${label} takes ${whole ? "a whole number, " : ""}${`${ends.join(" to ")} ${unit}`.trim()}.`,
} as const;

/** What a table of shifts of balance says. */
export const shiftWords = {
  phase: "Part of the corner",
  shift: "Shift",
  rearOrFront: "rear first | front first",
  way: "Which way",
  waiting: "…",
  sure: "sure",
  likely: "likely",
  "cannot say": "cannot say",
} as const;
