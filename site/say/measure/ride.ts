import type { DrivingHabit } from "@rollbook/lib";

/** What the page on which a phone rides along says. */
export const words = {
  title: "Ride along",
  description:
    "A phone fixed in the car records how it moves: was it driven the same way, and how far does the car roll",
  lead: "A phone that is fixed in the car feels how it brakes, turns and rolls. From that this page says whether two runs were driven the same way, and how much the car rolls for each m/s² of lateral acceleration.",
  onDevice: "Nothing leaves this device: rides stay on it until you delete them.",
  back: "Measure",
  workshop: "Workshop",
  caution: "Caution.",
  cautions: [
    "Fix the phone to the car’s body, in a holder that does not swing, where it hurts nobody if it comes loose. It is never held in a hand.",
    "A passenger starts and stops it, or whoever drives does before the car moves off and after it stands. Nobody looks at it on the way.",
    "Closed venue with the organiser’s leave, helmets and belts; the maker’s manual, the class rules and local codes come first.",
  ],
  withoutScript: "To record a ride or look at one, this page needs JavaScript.",
  stepsHead: "How it is done",
  steps: [
    "Try the sensors here, before the phone is mounted.",
    "Fix it any way round: how it lies is found out. A hard mount tells more than a soft one.",
    "Start, and leave this page open: a phone that sleeps records nothing. Stand still for five seconds, set off straight, brake straight once or twice.",
    "Drive. Ten steady turns of three seconds, to both sides, with a straight between, tell the roll; laps driven alike tell how much the driver varies.",
    "Stand still for five seconds. Stop.",
  ],
  sensorsHead: "Sensors",
  insecure:
    "This page came over plain http, or from a file: browsers then let no page feel motion. Do not mount the phone yet. Open the course on this phone over https, or record with another program and take its table in below.",
  none: "This browser has no motion sensors that a page can ask. Use a phone, or take a table in below.",
  notAsked:
    "The browser asks for motion, and for position, once you tap. Do it now, before the phone is mounted.",
  try: "Try the sensors",
  asking: "Waiting for the sensors.",
  refused:
    "Motion was not allowed. Allow it for this page in the browser’s settings, load the page again and tap once more.",
  silent: "The sensors say nothing: this device has none, or the browser keeps them shut.",
  answering: (rate: number, satellites: boolean) =>
    `The sensors answer${rate > 0 ? `, ${rate} times a second` : ""}. ${
      satellites
        ? "Satellites tell speed."
        : "No speed from satellites yet: without it roll is told by the roll rate alone, and no entry speed. Outdoors it may take a minute."
    }`,
  start: "Start recording",
  stop: "Stop",
  recording: (seconds: number) =>
    `Recording: ${seconds} s are kept on this device. Leave it alone until the car stands.`,
  kept: "The ride is kept on this device.",
  notKept:
    "This device keeps nothing: it is full, or lets no page keep anything. Nothing was started.",
  notKeptAll: "This device keeps no more. What was kept until now is in the list.",
  ridesHead: "Rides",
  noRides: "No rides on this device yet.",
  look: "Look at it",
  lookAt: (ride: string) => `Look at the ride of ${ride}`,
  save: "Save as a table",
  saveThe: (ride: string) => `Save the ride of ${ride} as a table`,
  remove: "Delete",
  removeThe: (ride: string) => `Delete the ride of ${ride}`,
  removed: "The ride is deleted.",
  fromTable: "from a table",
  fileName: (ride: string) => `ride-${ride}.csv`,
  working: "Working it out.",
  held: "Held against",
  nothingHeld: "no other ride",
  cannot: (why: string) => `That cannot be worked out: ${why}`,
  resultHead: (ride: string) => `The ride of ${ride}`,
  same: "It was driven the same way: entry speed, hardest moment, line and pace of each corner lie within what this driver usually varies.",
  sameUsual:
    "It was driven the same way, as far as one lap tells: entry speed, hardest moment, line and pace lie within what club drivers usually vary.",
  different: (what: string) => `It was not driven the same way: ${what}.`,
  one: "Choose a second ride to hold this one against: was it driven the same way?",
  cornersHead: "Corner by corner",
  pictureNote:
    "Seen from above: in, round, out. The way in is as long as the car was fast, the dot is the hardest moment, larger the harder. Thick and pale: the other ride. Dark: this one.",
  corner: (i: number, way: string) => `${i} ${way}`,
  noCorners: "No corners harder than 2.5 m/s² were found.",
  sidesUnknown:
    "No course came from satellites: left and right may be exchanged. Nothing else hangs on it.",
  rollHead: "Roll gradient",
  gradient: (text: string) => `Measured: ${text}.`,
  predicted: (car: string, text: string) => `The model of ${car} says ${text}.`,
  ways: (balance: string | undefined, integrated: string | undefined) =>
    [balance && `Balance of accelerations: ${balance}.`, integrated && `Roll rate: ${integrated}.`]
      .filter(Boolean)
      .join(" "),
  apart: "The two ways differ by more than they should: the band is wider by as much.",
  noGradient:
    "Not measured: it takes three turns at least of a second or more of steady turning, with a straight before and after.",
  take: (car: string) => `Keep as a reading of ${car}`,
  taken: (car: string) =>
    `Kept as a reading of ${car}: it stands on Measure, where what all readings together say takes it in.`,
  full: "There is no room for another reading: empty the form on Measure.",
  forDemo:
    "Readings can be kept for a car of your own: make one first, and let the course show it.",
  numbersHead: "All corners in numbers",
  columns: ["corner", "entry", "hardest", "steady", "roll rate", "roll by balance", "by roll rate"],
  phoneHead: "How the phone lay",
  lag: (seconds: string, scatter: string) =>
    `Satellites told speed ${seconds} late, each reading off by ${scatter} or so.`,
  speedsLeftOut:
    "What satellites told of speed goes with nothing that the phone felt: it is more than three seconds late, or of another drive. It was left out, and their courses too.",
  rest: (seconds: string) => `It stood still for ${seconds} in all.`,
  tableHead: "Take a table in",
  tableLead:
    "A table with named columns, one line a sample: time, forces along three axes (gravity in them), turn rates about the same three, and speed and course where there are any. Which axis is which is found out.",
  choose: "Choose a file (CSV)",
  mapping: "Which column is what",
  columnFor: (role: string) => `Column for ${role}`,
  unitFor: (kind: string) => `Unit of ${kind}`,
  noColumn: "none",
  takeIn: "Take in",
  takenIn: "The table is taken in.",
  tooLarge: "The file is larger than 50 MB, which is more than a ride has.",
  noHeads: "The file has no line with names of columns.",
} as const;

/** What differs between two rides, with how much. */
export const habitInWords: Readonly<Record<DrivingHabit, (by: string, more: boolean) => string>> = {
  entrySpeed: (by, more) => `corners were entered ${by} ${more ? "faster" : "slower"}`,
  peak: (by, more) => `the hardest moments were ${by} ${more ? "harder" : "softer"}`,
  hardestAt: (by, more) =>
    `the hardest moment came ${by} of the corner ${more ? "later" : "earlier"}`,
  radius: (by, more) => `the line was ${by} ${more ? "wider" : "tighter"}`,
  pace: (by, more) => `corners took ${by} ${more ? "longer" : "less time"}`,
};
