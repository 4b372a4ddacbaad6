import { label, line, type Mark, type Point, span, type Tone } from "@rollbook/cells";
import {
  type ChannelName,
  channelReach,
  channels,
  cornerMomentAt,
  cornerParts,
  type DriveName,
  type DrivenCorner,
  type Drives,
  drivenLength,
  namedDrives,
} from "@rollbook/lib";
import type { Chart } from "@rollbook/page";
import { words } from "../../../say/practice/words.js";

/** What the pictures show: what was namedDrives, and where the reader looks. */
export interface Look {
  readonly drives: Drives;
  /** m */
  readonly distance: number;
}

/** The stroke of each drive, the same in all pictures. */
export const tones: Readonly<Record<DriveName, Tone>> = {
  known: "muted",
  changed: "accent",
  again: "outside",
};

/** A trace against distance, its axes fixed by the car that is known. */
export function chartOf(channel: ChannelName, known: DrivenCorner): Chart<Look> {
  const { quantity } = channels[channel];
  const domain = span(...channelReach(known, channel), quantity);
  return {
    x: { label: words.distance, quantity: "length", domain: [0, drivenLength(known)] },
    y: { label: words.channels[channel], quantity, domain },
    draw: (look) => [
      ...partMarks(known, domain),
      ...traces(look, channel),
      cursor(look.distance, domain),
    ],
  };
}

/** Where the parts of the corner begin, each with its name, every other one lower. */
function partMarks(known: DrivenCorner, [bottom, top]: readonly [number, number]): Mark[] {
  return cornerParts(known).flatMap(({ phase, from, to }, i) => [
    line([[from, bottom] as Point, [from, top] as Point], "muted", { weight: "fine" }),
    label(
      [(from + to) / 2, top - (i % 2 === 0 ? 0.05 : 0.11) * (top - bottom)],
      phase,
      "muted",
      "middle",
    ),
  ]);
}

function traces({ drives }: Look, channel: ChannelName): Mark[] {
  return namedDrives(drives).map(([name, { moments }]) =>
    line(
      moments.map((moment): Point => [moment.distance, moment[channel]]),
      tones[name],
    ),
  );
}

function cursor(at: number, [bottom, top]: readonly [number, number]): Mark {
  const ends: Point[] = [
    [at, bottom],
    [at, top],
  ];
  return line(ends, "ink", { weight: "fine" });
}

/** What every drive measures at a place. */
export const valuesAt = ({ drives, distance }: Look) =>
  namedDrives(drives).map(([name, drive]) => [name, cornerMomentAt(drive, distance)] as const);
