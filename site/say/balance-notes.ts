import type {
  DifferentialDoubt,
  DifferentialShift,
  Eased,
  NearTipping,
  OnStop,
  PhaseName,
  Quantity,
  Trade,
} from "@rollbook/lib";
import { inList } from "./in-list.js";

/** Writes a quantity with its unit, with so many digits in metric units. */
export type Write = (quantity: Quantity, value: number, decimals: number) => string;

type End = "front" | "rear";

const inPart: Readonly<Record<PhaseName, string>> = {
  "braking in": "while braking in",
  "turn-in": "at turn-in",
  middle: "in the middle",
  "power on": "with power on",
};

/** Parts of a corner whose figures are for less braking or power than is usual. */
export function easedNotes(eased: readonly Eased[], write: Write): string[] {
  return eased.map(({ phase, asked, given }) => {
    const told = (value: number) => write("acceleration", Math.abs(value), 1);
    const does = asked < 0 ? "brake" : "gain speed";
    return `${capital(inPart[phase])} the car cannot ${does} with the usual ${told(asked)}: its figures there are for ${told(given)}, nearly the most that it can.`;
  });
}

/** The same of a changed car, one clause a part. */
export function easedClauses(eased: readonly Eased[], write: Write): string[] {
  return eased.map(({ phase, given }) => {
    const able = write("acceleration", Math.abs(given), 1);
    return `${inPart[phase]} it can no longer be given the usual ${given < 0 ? "brakes" : "power"}, only ${able}`;
  });
}

/** Parts whose hardest turn comes near to tipping over, but those of which it is said already. */
export function nearTippingNotes(
  near: readonly NearTipping[],
  told: readonly PhaseName[],
  write: Write,
): string[] {
  const found = near.filter(({ phase }) => !told.includes(phase));
  if (found.length === 0) return [];
  const where = inList(found.map(({ phase }) => inPart[phase]));
  const least = Math.min(...found.map(({ tipsOverAt }) => tipsOverAt));
  const at = write("acceleration", least, 2);
  return [
    `Beware: ${where} this car can turn to within a tenth of where it tips over, ${at} on a smooth road. A kerb, a hole or more grip can tip it: nobody drives it near that.`,
  ];
}

/** The same of a changed car, in a clause; tipping over is said in full. */
export function nearTippingClauses(
  near: readonly NearTipping[],
  tips: readonly PhaseName[],
): string[] {
  if (near.length === 0) return [];
  const where = inList(near.map(({ phase }) => inPart[phase]));
  const over = near.some(({ phase }) => tips.includes(phase));
  return [`BEWARE: ${over ? "it tips over" : "it comes near to tipping over"} ${where}`];
}

/** What figures assume where the kind of a differential is not known, and what another would do. */
export function differentialNotes(doubts: readonly DifferentialDoubt[], write: Write): string[] {
  return doubts.map(({ end, shifts, least }) => {
    const assumed = `The file does not say what kind of differential the ${end} axle has: figures take it as open.`;
    if (shifts.length === 0)
      return `${assumed} Another kind moves no margin by ${write("acceleration", least, 2)} or more, in the middle or with power on.`;
    const kinds = [...new Set(shifts.map(({ instead }) => instead))].map((instead) => {
      const moved = shifts.filter((shift) => shift.instead === instead);
      const by = moved.map(({ phase, shift }) => `${towards(shift, write)} ${inPart[phase]}`);
      return `${kindOf(instead, write)} would move the margin by ${inList(by)}`;
    });
    return `${assumed} ${capital(kinds.join("; "))}.`;
  });
}

function kindOf(instead: DifferentialShift["instead"], write: Write): string {
  if (instead.kind === "locked") return "a locked one";
  const share = (value: number) => write("share", value, 0);
  return `a limited-slip one (locking ${share(instead.power)} under power, ${share(instead.overrun)} on the overrun)`;
}

/** What the yaw rate that grows in those parts would take of the margin, m/s² as `yawAccelerationMargin`. */
export function yawNote(
  margins: Readonly<Partial<Record<PhaseName, number>>>,
  write: Write,
): string[] {
  const parts = (["braking in", "turn-in"] as const).flatMap((phase) => {
    const margin = margins[phase] ?? 0;
    return margin < 0 ? [`${write("acceleration", -margin, 2)} ${inPart[phase]}`] : [];
  });
  if (parts.length === 0) return [];
  return [
    `Margins take the yaw acceleration as zero, by definition. Where the yaw rate has to grow, the front pushes for that too: counted, the margin would be further towards understeer by ${inList(parts)}.`,
  ];
}

/** The wheels that are on a stop, one clause each, such as "the outer front wheel is on its bump stop at turn-in". */
export function onStopClauses(onStops: readonly OnStop[], is = "is"): string[] {
  const named = ({ end, wheel, stop }: OnStop) =>
    `the ${wheel} ${end} wheel ${is} on its ${stop} stop`;
  const each = [...new Set(onStops.map(named))];
  return each.map((name) => {
    const parts = onStops.filter((one) => named(one) === name);
    return `${name} ${inList(parts.map(({ phase }) => inPart[phase]))}`;
  });
}

/** The same as sentences about the car as it is. */
export const onStopNotes = (onStops: readonly OnStop[]): string[] =>
  onStopClauses(onStops).map((clause) => `${capital(clause)}.`);

/** Where a change makes balance better and the car slower, one clause a part. */
export function tradeClauses(trades: readonly Trade[], write: Write): string[] {
  return trades.map(
    ({ phase, slower }) =>
      `better balanced ${inPart[phase]}, ${write("acceleration", slower, 2)} slower`,
  );
}

/** Why changes of pressure stand in no order of what they do. */
export function pressureNote(ends: readonly End[]): string[] {
  if (ends.length === 0) return [];
  return [
    `Nobody has put in at which pressure the ${tyresOf(ends)} grip best. Below it more air helps and above it less: which way a change of pressure goes is not known, and none is ranked.`,
  ];
}

/** Why camber seems to cost nothing in braking and traction. */
export function leanNote(ends: readonly End[]): string[] {
  if (ends.length === 0) return [];
  return [
    `The data of the ${tyresOf(ends)} say nothing of what lean costs in braking and traction: camber seems free there, and is not.`,
  ];
}

/** What dampers are for. */
export const dampersNote =
  "Dampers decide how the car arrives in a turn and over bumps; what they do to balance at the limit is less than anybody feels, so none of their changes is ranked.";

const tyresOf = (ends: readonly End[]): string => `${ends.join(" and ")} tyres`;

const towards = (shift: number, write: Write): string =>
  `${write("acceleration", Math.abs(shift), 2)} towards ${shift > 0 ? "understeer" : "oversteer"}`;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
