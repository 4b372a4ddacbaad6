import { type CarLever, type Change, type End, type EndLever, isEndChange } from "@rollbook/lib";
import type { FigureState } from "../figure-state.js";
import { leverReasons } from "./lever-reasons.js";

/** Why a change moves balance, and where that can be seen. */
export interface Why {
  readonly because: string;
  readonly shownBy: FigureState;
}

/** Why a change of a lever moves balance, in one sentence, and the figure that shows it. */
export function whyOf(change: Change): Why {
  const way = change.by > 0 ? "most" : "least";
  if (!isEndChange(change))
    return {
      because: leverReasons[change.lever](change.by > 0),
      shownBy: ofCar(change.lever, way),
    };
  const { lever, end, by } = change;
  return { because: leverReasons[lever](end, by > 0), shownBy: ofEnd[lever](end, way) };
}

type Way = "least" | "most";

const at = (chapter: string, figure: string, state: FigureState["state"]): FigureState => ({
  chapter,
  figure,
  state,
});

const dampers = (end: End, way: Way) =>
  at("07-how-fast-the-load-arrives", "which-end", { [end]: way });

/** Figures that move the same lever; where one shows a single axle, the other works alike. */
const ofEnd: Readonly<Record<EndLever, (end: End, way: Way) => FigureState>> = {
  barPosition: (end, way) =>
    at("03-distribution-between-axles", "axle-limits", { [`${end}Bar`]: way }),
  springRate: (end, way) => at("06-springs-and-put-back", "spring-levers", { [end]: way }),
  seatTurns: (_, way) => at("04-roll-centre", "construct", { heave: way }),
  tyrePressure: (end, way) => at("05-tyre-pressure", "trim", { [end]: way }),
  camber: (_, way) => at("04-roll-centre", "lean-and-grip", { camber: way }),
  toe: () => at("02-tyre-nonlinearity", "slip-curve", { slipAngle: "8" }),
  rollCentreHeight: (_, way) => at("04-roll-centre", "raise", { height: way }),
  damperBump: dampers,
  damperRebound: dampers,
};

function ofCar(lever: CarLever, way: Way): FigureState {
  return lever === "brakeFrontShare"
    ? at("07-how-fast-the-load-arrives", "four-balances", { brakes: way })
    : at("02-tyre-nonlinearity", "ballast", { extraMass: "most" });
}
