import type { Quantity } from "../../units.js";
import type { CornerMoment, DrivenCorner } from "./drive-corner.js";
import type { HelpLevel } from "./puzzle.js";

export const channelNames = [
  "speed",
  "lateralAcceleration",
  "steeringWheel",
  "sideSlip",
  "balance",
] as const;
export type ChannelName = (typeof channelNames)[number];

/** What a trace measures, and digits after the point in the metric unit. */
export const channels: Readonly<Record<ChannelName, { quantity: Quantity; decimals: number }>> = {
  speed: { quantity: "speed", decimals: 1 },
  lateralAcceleration: { quantity: "acceleration", decimals: 2 },
  steeringWheel: { quantity: "angle", decimals: 1 },
  sideSlip: { quantity: "angle", decimals: 2 },
  balance: { quantity: "acceleration", decimals: 2 },
};

/** What a driver can notice without instruments. */
const fromTheSeat: readonly ChannelName[] = ["speed", "lateralAcceleration", "steeringWheel"];

/** The traces that a level shows until it is scored. */
export const channelsOf = (level: HelpLevel): readonly ChannelName[] =>
  level === 3 ? fromTheSeat : channelNames;

const ROOM = 0.15; // share of a trace's height left free above and below, for other set-ups

/** From where to where a trace goes, with room for other set-ups. */
export function channelReach({ moments }: DrivenCorner, channel: ChannelName): [number, number] {
  const values = moments.map((moment: CornerMoment) => moment[channel]);
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const room = ROOM * (most - least) || 1e-3;
  return [least - room, most + room];
}
