/** What the list of cars says, and what is said once something was done with one. */
export const carWords = {
  cars: "Your cars",
  courseShows: "The course shows",
  own: "the workbook’s own car",
  inFront: "in front",
  startCopy: (car: string) => `Start from a copy of the ${car}`,
  open: "Open car or class files",
  edit: "Change",
  editing: "Open below",
  asFile: "Save as file",
  copy: "Copy",
  remove: "Delete",
  undo: "Undo",
  unsaved: "unsaved changes",
  notSaved: "not saved yet",
  nowShows: (car: string) => `The course now shows ${car}.`,
  notShownYet: (car: string) =>
    `Chapters do not show ${car} yet: this device has no room where a page looks as it opens.`,
  removed: (car: string) => `${car} is deleted.`,
  newName: "My car",
  kept: (car: string) => `${car} is saved.`,
  keptAndShown: (car: string) => `${car} is saved, and the course shows it.`,
  notKept:
    "This device keeps nothing, or is full: save the car as a file before you close the page.",
  cannotSave: "Not saved yet: see what needs a look.",
  discarded: "The changes are dropped.",
  widened: (lever: string, value: string) =>
    `${lever} is set to ${value}, so its range of adjustment now reaches that far.`,
  cameIn: (car: string, file: string) => `${car} came in from ${file}.`,
  cameInOf: (count: number, of: number) => `${count} of ${of} files came in.`,
  tooLarge: (file: string) => `${file} is larger than any car file.`,
  moreLines: (count: number) => `and ${count} more`,
  renamed: (before: string, now: string) =>
    `There was a ${before} already, so it is called ${now}.`,
  faulty: (file: string) => `${file} cannot be taken as it is:`,
  aside: (car: string) =>
    `${car} is kept, but this course cannot show it as it is. Nothing of it was deleted.`,
  unnamed: "A car without a name",
  moreFaults: (count: number) => `Wrong besides: ${count}.`,
  mend: "Open it and mend it here",
  mendNote: "What it lacks is taken from the workbook’s own car and marked.",
  close: "Close",
  unreadable: (file: string) => `${file} could not be read.`,
} as const;

/** What a copy of a car is called at first. */
export const nameOfCopy = (car: string) => `Copy of ${car}`;
