/** What is wrong with a value that was typed. */
export const faultWords = {
  nameless: "Name is empty: give the car a name.",
  nameTooLong: (most: number) => `Name takes at most ${most} characters.`,
  nameOfDemo: (name: string) => `${name} is the workbook’s own car: choose another name.`,
  nameTaken: (name: string) => `You have a ${name} already: choose another name.`,
  takes: (name: string, range: string) => `${name} takes ${range}`,
  takesWhole: (name: string, range: string) => `${name} takes a whole number, ${range}`,
  not: (takes: string, given: string) => `${takes}, not ${given}.`,
  asLength: (name: string) =>
    `${name} as a length needs the diameter it was measured at, and whether it is of one wheel or of both: such as 1 mm at 380 mm per wheel, or 2 mm at 380 mm total.`,
  left: (takes: string) => `${takes}; it is empty.`,
} as const;
