import type { Car, CarFigures, Change, PlanWarning } from "@rollbook/lib";
import * as change from "../say/change.js";
import * as figures from "../say/figures.js";
import * as plan from "../say/plan.js";
import { reader } from "./reader.js";

export { pollAdviceInWords } from "../say/poll.js";

/** A change as on a card: "front spring rate 60 → 65 N/mm"; the car is the one before it. */
export const changeLabel = (made: Change, car: Car): string =>
  change.changeLabel(made, car, reader);

/** What moved, in words; figures after less figures before. */
export const movedInWords = (moved: CarFigures): string[] => figures.movedInWords(moved, reader);

/** What to know before a run of a plan. */
export const warningInWords = (warning: PlanWarning): string =>
  plan.warningInWords(warning, reader);
