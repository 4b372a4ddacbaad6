import {
  DEGREE,
  type Felt,
  type Fix,
  formatCsv,
  parseCsv,
  Refusal,
  type Ride,
} from "@rollbook/lib";

/** What a column of a table of samples may hold. */
export type Role = "time" | `${"force" | "turn"}${"X" | "Y" | "Z"}` | "speed" | "course";

/** All of them; those of a phone's sensors come first. */
export const roles: readonly Role[] = [
  "time",
  ...(["forceX", "forceY", "forceZ"] as const),
  ...(["turnX", "turnY", "turnZ"] as const),
  ...(["speed", "course"] as const),
];

/** Units that a column may have, and how many of SI one is. */
export const unitsOf = {
  time: { s: 1, ms: 1e-3, ns: 1e-9 },
  force: { "m/s²": 1, g: 9.80665 }, // NIST SP 811 (2008), B.8
  turn: { "rad/s": 1, "°/s": DEGREE },
  speed: { "m/s": 1, "km/h": 1 / 3.6, mph: 0.44704 }, // NIST SP 811 (2008), B.8
  course: { rad: 1, "°": DEGREE },
} as const satisfies Record<string, Readonly<Record<string, number>>>;
export type Kind = keyof typeof unitsOf;

export const kindOf = (role: Role): Kind => role.replace(/[XYZ]$/, "") as Kind;

/** Which column of a table is what, from 0, and in which units they are. */
export interface Mapping {
  readonly columns: Readonly<Partial<Record<Role, number>>>;
  readonly units: Readonly<Record<Kind, string>>;
}

/** Roles without which a table is no ride. */
const needed: readonly Role[] = roles.slice(0, 7);

const names: Readonly<Record<Role, string>> = {
  time: "time_s",
  forceX: "force_x_m_s2",
  forceY: "force_y_m_s2",
  forceZ: "force_z_m_s2",
  turnX: "turn_x_rad_s",
  turnY: "turn_y_rad_s",
  turnZ: "turn_z_rad_s",
  speed: "speed_m_s",
  course: "course_rad",
};

const digits = (value: number): string => String(Number(value.toFixed(6)));

/** A ride as a table with named columns and units; a speed has a line of its own, at its time. */
export function tableOf({ felt, fixes }: Ride): string {
  const start = felt[0]?.time ?? 0;
  const blank = (count: number) => Array.from({ length: count }, () => "");
  const rows = [
    ...felt.map(({ time, force, turn }) => ({
      time,
      cells: [...[...force, ...turn].map(digits), ...blank(2)],
    })),
    ...fixes.map(({ time, speed, course }) => ({
      time,
      cells: [...blank(6), digits(speed), course === undefined ? "" : digits(course)],
    })),
  ].sort((a, b) => Number(digits(a.time - start)) - Number(digits(b.time - start)));
  return formatCsv([
    roles.map((role) => names[role]),
    ...rows.map(({ time, cells }) => [digits(time - start), ...cells]),
  ]);
}

/** What columns of a table may be, by their names, for a reader to look over. */
export function guessed(heads: readonly string[]): Mapping {
  const plain = heads.map((head) => head.toLowerCase().replace(/[^a-z0-9°²]+/g, " "));
  const columns: Partial<Record<Role, number>> = {};
  for (const role of roles) {
    const at = plain.findIndex(
      (head, i) => LIKE[role].test(head) && !Object.values(columns).includes(i),
    );
    if (at >= 0) columns[role] = at;
  }
  const unit = (kind: Kind, role: Role): string => {
    const head = columns[role] === undefined ? "" : (plain[columns[role]] ?? "");
    return (
      UNIT_LIKE[kind].find(([like]) => like.test(head))?.[1] ?? Object.keys(unitsOf[kind])[0] ?? ""
    );
  };
  return {
    columns,
    units: {
      time: unit("time", "time"),
      force: unit("force", "forceX"),
      turn: unit("turn", "turnX"),
      speed: unit("speed", "speed"),
      course: unit("course", "course"),
    },
  };
}

const axis = (what: string, letter: string, greek: string) =>
  new RegExp(`(${what}).*${letter}\\b|\\b(${greek})\\b`);
const FORCE = "force|acc";
const TURN = "turn|gyr|rot|angular|rate";
const LIKE: Readonly<Record<Role, RegExp>> = {
  time: /^time|^t\b|timestamp|elapsed|^milli/,
  forceX: axis(FORCE, "x", "ax"),
  forceY: axis(FORCE, "y", "ay"),
  forceZ: axis(FORCE, "z", "az"),
  turnX: axis(TURN, "x", "alpha|wx|gx|roll ?rate"),
  turnY: axis(TURN, "y", "beta|wy|gy|pitch ?rate"),
  turnZ: axis(TURN, "z", "gamma|wz|gz|yaw ?rate"),
  speed: /speed|velocity/,
  course: /course|heading|bearing/,
};
const UNIT_LIKE: Readonly<Record<Kind, readonly (readonly [RegExp, string])[]>> = {
  time: [
    [/\bms\b|milli/, "ms"],
    [/\bns\b|nano/, "ns"],
  ],
  force: [[/\bg\b/, "g"]],
  turn: [[/deg|°/, "°/s"]],
  speed: [
    [/km h|kmh|kph/, "km/h"],
    [/mph/, "mph"],
  ],
  course: [[/deg|°/, "°"]],
};

/** The heads of a table, without its numbers. */
export function headsOf(text: string): readonly string[] {
  const first = text.slice(0, 10_000).split(/\r\n|\n|\r/, 1)[0] ?? "";
  return parseCsv(first).table?.[0] ?? [];
}

const LARGEST = 50e6; // characters

/**
 * The ride that a table holds.
 *
 * @throws Refusal that says which column is missing, or on which line what is no number
 */
export function rideFrom(text: string, { columns, units }: Mapping): Ride {
  if (text.length > LARGEST)
    throw new Refusal(
      "out-of-range",
      "The table is larger than 50 MB, which is more than a ride has.",
    );
  const missing = needed.find((role) => columns[role] === undefined);
  if (missing !== undefined)
    throw new Refusal("no-samples", `A column for ${spoken(missing)} is needed.`);
  const read = parseCsv(text);
  if (read.table === undefined) throw new Refusal("not-a-number", read.fault);
  const { table, lines } = read;
  const felt: Felt[] = [];
  const fixes: Fix[] = [];
  for (const [i, row] of table.entries()) {
    if (i === 0 || row.every((cell) => cell.trim() === "")) continue;
    const at = (role: Role) => cellOf(row, role, { columns, units }, lines[i] ?? i + 1);
    const time = at("time");
    const three = (kind: "force" | "turn") => [at(`${kind}X`), at(`${kind}Y`), at(`${kind}Z`)];
    const [force, turn] = [three("force"), three("turn")];
    const [speed, course] = [at("speed"), at("course")];
    if (time === undefined) throw new Refusal("not-a-number", `Line ${lines[i]} has no time.`);
    if (isWhole(force) && isWhole(turn)) felt.push({ time, force, turn });
    const last = fixes.at(-1);
    if (speed !== undefined && speed >= 0 && (last?.speed !== speed || time - last.time > 0.9))
      fixes.push({ time, speed, ...(course !== undefined && { course }) });
  }
  return { felt, fixes };
}

const isWhole = (three: readonly (number | undefined)[]): three is [number, number, number] =>
  three.every((one) => one !== undefined);

/** A role as a sentence names it: "force x". */
export const spoken = (role: string): string =>
  role.replace(/[XYZ]$/, (letter) => ` ${letter.toLowerCase()}`);

function cellOf(
  row: readonly string[],
  role: Role,
  { columns, units }: Mapping,
  line: number,
): number | undefined {
  const column = columns[role];
  const text = column === undefined ? "" : (row[column] ?? "").trim();
  if (text === "") return undefined;
  const kind = kindOf(role);
  const size = (unitsOf[kind] as Readonly<Record<string, number>>)[units[kind]] ?? 1;
  const value = Number(
    /^[-+\d.,eE]+$/.test(text) ? text.replace(/^(-?\d+),(\d+)$/, "$1.$2") : Number.NaN,
  );
  if (!Number.isFinite(value))
    throw new Refusal(
      "not-a-number",
      `Line ${line}: ${spoken(role)} is “${text.slice(0, 30)}” but must be a number.`,
    );
  return value * size;
}
