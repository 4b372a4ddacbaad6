import { axleLoadsOf, GRAVITY, lateralLoadTransfer, rigidCarOf } from "@rollbook/lib";
import type { Draw, Misconception } from "./question.js";
import { briskTurn } from "./set-up.js";

const first: Draw = (car, tell) => {
  const turn = briskTurn(car);
  const { total, rollAngle } = axleLoadsOf(car, turn);
  const rigid = lateralLoadTransfer({ ...rigidCarOf(car), lateralAcceleration: turn });
  const share = rigid / total;
  const both = `On solid blocks it is ${tell.newtons(rigid)}, on springs ${tell.newtons(total)}`;
  return {
    ask: `At ${tell.turn(turn)} this car leans ${tell.degrees(rollAngle.front)} and ${tell.newtons(total)} goes to its outside tyres. A second car has the same mass, height and track, but solid blocks for springs, and it does not lean at all. How much load goes to its outside tyres?`,
    choices: [
      {
        text: "None: it does not lean.",
        isSo: share < 0.05,
        because: `${both}. The side force acts on the ground, the mass resists at its height, and that pair tips the car whether or not anything gives.`,
        idea: "roll-moves-load",
      },
      {
        text: "Nearly as much.",
        isSo: share >= 0.85 && share <= 1.15,
        because: `${both}. The difference is what the leaning body adds by hanging out.`,
      },
      {
        text: "Some, but clearly less: only what its tyres let it lean.",
        isSo: share >= 0.05 && share < 0.85,
        because: `${both}. Load moves in proportion to the side force, not to the lean.`,
        idea: "less-roll-less-transfer",
      },
      {
        text: "Clearly more: nothing gives.",
        isSo: share > 1.15,
        because: `${both}. Stiffness does not make load; mass, turn, height and track do.`,
        idea: "stiffer-moves-more",
      },
    ],
  };
};

/** A kart with its driver, invented. */
const kart = { mass: 160, centreOfGravityHeight: 0.28, track: 1.1 };

const twin: Draw = (_car, tell) => {
  const turn = 12; // m/s²
  const moved = lateralLoadTransfer({ ...kart, lateralAcceleration: turn });
  const halfWeight = (kart.mass * GRAVITY) / 2;
  const sum = `${tell.kilograms(kart.mass)} × ${tell.acceleration(turn, 0)} × ${tell.metres(kart.centreOfGravityHeight)} ÷ ${tell.metres(kart.track)}`;
  return {
    ask: `A kart has no springs. With its driver it has ${tell.kilograms(kart.mass)}, its centre of gravity stands ${tell.metres(kart.centreOfGravityHeight)} above the road, its track is ${tell.metres(kart.track)}. It turns at ${tell.turn(turn)}. How much load goes to its outside tyres?`,
    choices: [
      {
        text: `${tell.newtons(halfWeight)}, all that the inside tyres had: it is as stiff as can be.`,
        isSo: moved >= halfWeight,
        because: `Being stiff does not lift a wheel; the moment does, and it is not yet that large: ${tell.newtons(moved)}.`,
        idea: "stiffer-moves-more",
      },
      {
        text: "None: without springs nothing rolls.",
        isSo: moved === 0,
        because: `Nothing rolls, and ${tell.newtons(moved)} moves all the same. Ask anyone who has lifted an inside rear wheel in a kart.`,
        idea: "roll-moves-load",
      },
      {
        text: `${tell.newtons(moved)}: mass, turn and height, over track.`,
        isSo: moved >= 0.1 * halfWeight && moved < halfWeight,
        because: `${sum}. No spring is in that sum.`,
      },
      {
        text: "Hardly any: only its tyres and its frame give a little.",
        isSo: moved > 0 && moved < 0.1 * halfWeight,
        because: `How much gives does not matter. It moves ${tell.newtons(moved)}, ${tell.percent(moved / halfWeight, 0)} of all that its inside tyres carry.`,
        idea: "less-roll-less-transfer",
      },
    ],
  };
};

export const rollMovesLoad: Misconception = {
  idea: "roll-moves-load",
  chapter: "01-load-transfer",
  first,
  twin,
};
