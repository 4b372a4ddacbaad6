import { stifferMovesMore } from "./01-stiffer-moves-more.js";
import { rollMovesLoad } from "./02-roll-moves-load.js";
import { gripInProportion } from "./03-grip-in-proportion.js";
import { softHelpsBoth } from "./04-soft-helps-both.js";
import { barHelpsOwnEnd } from "./05-bar-helps-own-end.js";
import { pressureOneWay } from "./06-pressure-one-way.js";
import { ballastIsFree } from "./07-ballast-is-free.js";
import { understeerIsFixed } from "./08-understeer-is-fixed.js";
import { dampersHoldLoad } from "./09-dampers-hold-load.js";
import { lessRollLessTransfer } from "./10-less-roll-less-transfer.js";
import { lessDiveLessTransfer } from "./11-less-dive-less-transfer.js";
import { alwaysMoreToMove } from "./12-always-more-to-move.js";
import { moreCamberGrips } from "./13-more-camber-grips.js";
import { rollCentreRemoves } from "./14-roll-centre-removes.js";
import { feltSoItWorked } from "./15-felt-so-it-worked.js";
import type { Misconception } from "./question.js";

/** The fifteen misconceptions, in the order of the check. */
export const misconceptions: readonly Misconception[] = [
  stifferMovesMore,
  rollMovesLoad,
  gripInProportion,
  softHelpsBoth,
  barHelpsOwnEnd,
  pressureOneWay,
  ballastIsFree,
  understeerIsFixed,
  dampersHoldLoad,
  lessRollLessTransfer,
  lessDiveLessTransfer,
  alwaysMoreToMove,
  moreCamberGrips,
  rollCentreRemoves,
  feltSoItWorked,
];
