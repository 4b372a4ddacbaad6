import type { EndLever } from "@rollbook/lib";
import type { Part } from "../../../cells/marks.js";

/** What of a car a lever takes hold of. */
export const PARTS: Readonly<Record<EndLever, Part>> = {
  barPosition: "bar",
  springRate: "springs",
  seatTurns: "springs",
  damperBump: "dampers",
  damperRebound: "dampers",
  tyrePressure: "tyres",
  camber: "links",
  toe: "links",
  rollCentreHeight: "links",
};
