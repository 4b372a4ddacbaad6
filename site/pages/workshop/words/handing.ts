/** What is said when entries go from one device to another. */
export const handing = {
  title: "What the link brings",
  brings: (what: string) => `This link brings entries for the log: ${what}.`,
  count: (count: number, kind: string) => `${count} × ${kind}`,
  isDay: (day: string) => `It is the day “${day}”.`,
  dayHere: (day: string) => `They belong to the day “${day}”, which is in this log.`,
  dayNotHere: (day: string, address: string) =>
    `They belong to the day “${day}”, which is not in the log of this address, ${address}. Each address of the workbook has a log of its own, also on the same device: if the day is under another one, open Log there and paste the link.`,
  noDayNamed: "The link does not say to which day they belong.",
  copyLink: "Copy the link",
  copied: "The link is copied.",
  inAddress: "This browser does not copy here; the link is in the address bar.",
  take: "Take them in",
  leave: "Leave them",
  unreadable:
    "This link should bring entries for the log, but they cannot be read: it may have been cut short.",
  help: "Point the other phone’s camera at it and open the link: the entries are in the link itself, and go nowhere else.",
  code: (number: number, of: number) =>
    of === 1 ? "One code holds it all" : `Code ${number} of ${of}`,
  tooLarge: (count: number) =>
    `${count === 1 ? "One entry is" : `${count} entries are`} too large for a code: hand over a file instead.`,
  noAddress:
    "This copy is open from a folder, which no other device can reach. Codes work once the address of the workbook is known, under",
  share: "Share",
  show: "Show as a code",
  dayToPhones: "Give the day to the drivers’ phones",
  dayHelp:
    "Corners, drivers and runs, so that the report form knows them. Nothing of what is predicted.",
  saveDay: "Save it as a file",
  dayName: (name: string) => `day-${name}.json`,
} as const;
