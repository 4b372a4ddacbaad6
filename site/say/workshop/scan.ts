/** What is said while a camera reads codes. */
export const scan = {
  start: "Scan codes",
  stop: "Put the camera away",
  help: "Hold one phone after the other before the camera. Each code is taken in at once; several codes of one phone may come in any order.",
  camera: "What the camera sees",
  noCamera:
    "This address gives no camera. Open the workbook at localhost on this machine, or by https; or take in files.",
  refused: "The camera cannot be had: allow it for this page, or close what else uses it.",
  run: (driver: string, run: number) => `${driver}, run ${run}`,
  something: "Entries",
  added: (who: string, count: number) =>
    `${who}: ${count === 1 ? "one entry" : `${count} entries`}, new.`,
  known: (who: string) => `${who}: already here.`,
  noCode: "This is no code of the workbook, or it cannot be read.",
} as const;
