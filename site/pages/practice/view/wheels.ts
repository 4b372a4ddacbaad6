/** The wheels in the order in which the page shows them, with the key of their words. */
export const wheels = [
  ["front", "left", "frontLeft"],
  ["front", "right", "frontRight"],
  ["rear", "left", "rearLeft"],
  ["rear", "right", "rearRight"],
] as const;
