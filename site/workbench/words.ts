/** What the workbench says of itself. */
export const words = {
  open: "Edit and run",
  opening: "Opening …",
  notLoaded: "The editor could not be loaded; load the page again.",
  about:
    "Change a cell and run them all again. Edited code runs apart from this page: it reaches neither the network nor what this device keeps. Types are left aside, not checked. The chapter itself stays as it is.",
  run: "Run",
  runKeys: "Run (Ctrl+Enter)",
  running: "Running …",
  resetAll: "Reset all",
  reset: "Reset this cell",
  resetCell: (id: string) => `Reset cell ${id}`,
  copyLink: "Copy a link to this version",
  copied: "Link copied.",
  inBar: "The link is in the address bar.",
  nothingEdited: "No cell is edited; the address of this page is the link.",
  tooLong: (most: number) =>
    `These edits do not fit into a link of ${most} characters. Shorten them, or send the text itself.`,
  cell: (id: string) => `Cell ${id}`,
  keyboard: "Escape, then Tab, leaves the editor.",
  edited: "edited",
  ran: (results: number, seconds: string) => `All cells ran: ${results} results, ${seconds} s.`,
  runsAsWritten: "These cells are as the chapter has them.",
  fromLink: (count: number) =>
    `This link brings changes to ${count === 1 ? "one cell" : `${count} cells`}, marked “edited”. Nothing has run. Read them, then choose Run. They are not kept on this device.`,
  badLink: "The changes in this link cannot be read, so the cells are as the chapter has them.",
  strangeCell: (id: string) =>
    `This link changes a cell “${id}”, which this chapter does not have, so nothing of it is taken.`,
  at: (id: string, line: number | undefined, message: string) =>
    `Cell ${id}${line === undefined ? "" : `, line ${line}`}: ${message}`,
  silent: (seconds: number) =>
    `no answer for ${seconds} seconds, so it was stopped. A loop without end?`,
  neverStarted: "The cells did not start, so they were stopped. Run them again.",
  unasked: "The cells sent something that nobody asked for, so they were stopped.",
  rested:
    "The cells rest: nothing was asked of them for 10 seconds, so they were stopped. Moving a slider runs them again.",
  hidden:
    "The cells rest: they were stopped when this page went out of sight. Moving a slider or Run runs them again.",
  ranAgain: "All cells ran again.",
  cannotShow: (reason: string) => `Cannot be shown: ${reason}`,
  stopped: "Stopped; run the cells again.",
} as const;
