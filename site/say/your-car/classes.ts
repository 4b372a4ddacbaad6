/** What is said of classes, their rules, and what is handed on. */
export const classWords = {
  title: "Class",
  goesBy: "The course goes by",
  none: "no class",
  noneHelp:
    "An organiser’s class file sets limits, the control tyre and what may not be moved, for every car of this device.",
  rules: (count: number) => (count === 1 ? "1 rule" : `${count} rules`),
  nowGoesBy: (name: string) => `The course now goes by ${name}.`,
  nowNone: "The course now goes by no class.",
  cameIn: (name: string, file: string) =>
    `${name} came in from ${file}, and the course goes by it.`,
  removed: (name: string) => `${name} is deleted.`,
  inClass: "Your cars against its rules",
  held: "holds every rule",
  cannotStand: "cannot stand on its springs",
  fixed: "Not to be moved",
  nothingFixed: "Its rules fix nothing.",
  begin: (car: string) => `Start from its ${car}`,
  venue: "Venue",
  briefing: "Briefing",
  course: "The club’s own course",
  caution:
    "The rule book and its scrutineers come first: this is what the course goes by when it proposes something.",
  handOn: "Link and codes",
  handOnTitle: (name: string) => `Hand on ${name}`,
  handOnHelp:
    "Whoever opens the link, or points a phone’s camera at every code, is asked whether to take it in. All of it is in the link itself: nothing is sent to anybody.",
  copyLink: "Copy the link",
  linkCopied: "The link is copied.",
  linkNotCopied: "The browser did not allow it; save a file and hand that on.",
  code: (number: number, count: number) => (count === 1 ? "Code" : `Code ${number} of ${count}`),
  tooLarge: "It is too large for codes: hand on the link, or a file.",
  noAddress:
    "Other devices cannot open this copy of the course. Type the address of its public copy on",
  share: "Share",
  close: "Close",
  brings: (what: string, name: string) => `A link brings the ${what} ${name}.`,
  what: { car: "car", class: "class" },
  take: "Take it in",
  leave: "Leave it",
  unreadable: "A link brought something that is no car and no class, or not all of it.",
  faulty: "A link brought something that cannot be taken as it is:",
  waiting: (here: number, count: number) =>
    `${here} of ${count} codes are here. Point the camera at the others, in any order.`,
  forget: "Forget them",
  tookIn: (name: string) => `${name} came in.`,
  notKept: "This device keeps nothing, or is full: it is not kept.",
} as const;
