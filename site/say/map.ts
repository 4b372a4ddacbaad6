import type { PhaseName } from "@rollbook/lib";

/** Every word that the map says of itself, apart from code so that it can be translated. */
export const words = {
  title: "Set-up map",
  description:
    "Balance and grip of your car over two levers at once, drawn anew while a third one moves, with the limits of the class.",
  lead: "Two levers at once: which end gives up first, and how hard the car can turn, at every pair of settings. Move a third lever and watch the whole map move with it.",
  needs:
    "The map is worked out in this page and needs JavaScript. It draws the balance of a car over any two of its levers as contour lines, marks the present set-up, hatches what the class does not allow, and can be read point by point with the arrow keys, by touch or as a table. The chapters tell what each lever does, without JavaScript too.",
  tooFew: (car: string) =>
    `The file of ${car} gives fewer than two adjusters with a range, so there is nothing to map. Add adjusters to the car and come back.`,
  whose: (car: string) => `The car is ${car}, in a left turn on a smooth, level road.`,

  // Controls
  along: "Across",
  up: "Upwards",
  third: "Third lever",
  part: "Part of the corner",
  parts: {
    "braking in": "Braking in",
    "turn-in": "Turn-in",
    middle: "Middle",
    "power on": "Power on",
  } as Readonly<Record<PhaseName, string>>,
  reset: "Reset",
  link: "Link to this map",
  linked: "Copied.",
  inBar: "The link is in the address bar.",
  speed: "Speed",

  // The map
  map: (along: string, up: string) => `Map over ${along} and ${up}`,
  role: "map",
  keys: "Arrow keys move the reading mark one step, Page Up and Page Down five steps, Home to the present set-up. Or touch any point.",
  notDrawn: (reason: string) => `Not drawn: ${reason}`,
  legend: "Legend",
  solid: (step: string) =>
    `Solid lines: understeer margin, ${step} from one to the next; plus is understeer, minus oversteer`,
  neutral: "Thick line: neutral, both ends give up together",
  dashed: (step: string) => `Dashed lines: hardest turn, ${step} from one to the next`,
  hatched: "Hatched: outside a limit of the class",
  noLimits: "The file of this car gives no limits of a class.",
  car: "Diamond: the present set-up",
  mark: "Circle: the reading mark",
  oversteer: (value: string) => `${value} oversteer`,
  understeer: (value: string) => `${value} understeer`,
  between: "Between the positions of a bar the map is a blend; only the positions can be set.",
  exactness: {
    moving: (error: string) =>
      `Within ${error} while you move, as checked at places between; exact once you stop.`,
    movingBeyond: (error: string, allowed: string) =>
      `Off by up to ${error} while you move, more than the ${allowed} it should be: the balance bends somewhere here. Stop, and read the exact map.`,
    working: (error: string) =>
      `Within ${error}, as checked at places between; now being worked out in full.`,
    workingBeyond: (error: string, allowed: string) =>
      `Off by up to ${error}, more than the ${allowed} it should be; now being worked out in full.`,
    exact: "Exact now: every place of the map is worked out in full.",
  },
  working: "The whole map is being worked out.",
  undrawn: (why: string) => `Dotted: no balance to draw, for there ${why}`,
  why: {
    tips: "the car tips over before its tyres let go",
    "cannot give": "it cannot brake or gain speed as hard as is usual in this part of the corner",
    "cannot stand": "it cannot stand on its springs or hold its speed",
  },
  or: ", or ",

  // Sentences
  setting: (name: string, value: string) => `${name} ${value}`,
  reading: (settings: string, balance: string, turn: string, limits: string) =>
    `${settings}: ${balance}, hardest turn ${turn}${limits}.`,
  isCar: " (as the car is set)",
  ahead: {
    front: (margin: string) => `the front gives up first, ${margin} before the rear`,
    rear: (margin: string) => `the rear gives up first, ${margin} before the front`,
    both: "both ends give up together",
  },
  lifts: (end: string) => `, inner ${end} wheel in the air`,
  nearTipping: (at: string) => `, within a tenth of where it tips over, ${at}: beware`,
  tipsOver: (settings: string, turn: string, rest: string) =>
    `${settings}: the car tips over at ${turn}, before its tyres let go, so there is no balance to read${rest}.`,
  brakesLess: (able: string) =>
    `; it cannot brake as hard as is usual there, and this is for ${able}, nearly the most that it can`,
  drivesLess: (able: string) =>
    `; it cannot gain speed as fast as is usual there, and this is for ${able}, nearly the most that it can`,
  outside: (what: string) => `; outside the class limits: ${what}`,
  cannot: (settings: string, reason: string) => `${settings}: not worked out, ${reason}`,
  result: (from: string, to: string, least: string, most: string, where: string) =>
    `Over this map the balance runs from ${from} to ${to} and the hardest turn from ${least} to ${most}; the hardest ${where}.`,
  nothing: "Nowhere on this map is there a balance to draw.",
  inside: (settings: string) => `within the limits is near ${settings}`,
  anywhere: (settings: string) => `of all is near ${settings}`,
  nowhere: "is nowhere within the limits",
  understeers: (margin: string) => `${margin} of understeer`,
  oversteers: (margin: string) => `${margin} of oversteer`,

  // The table
  table: "The map as a table",
  caption: (along: string, up: string) =>
    `Understeer margin and hardest turn; ${along} across, ${up} downwards. × is outside a limit of the class, – where the car cannot brake or gain speed as hard as is usual there, ! where it comes within a tenth of tipping over.`,
  cross: " ×",
  tipping: " !",
  cellTips: (turn: string) => `tips over at ${turn}`,
  cellEased: "–",
  corner: (up: string, along: string) => `${up} \\ ${along}`,

  // Links
  noSuch: (name: string, given: string) =>
    `The link asks for ${name} “${given}”, which this car does not have.`,
  notANumber: (name: string, given: string) => `${name} takes a number, not “${given}”.`,
  outOfRange: (name: string, from: string, to: string, given: string) =>
    `${name} takes ${from} to ${to}, not ${given}.`,
} as const;
