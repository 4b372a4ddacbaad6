import { axleLoadsOf, bestInclination, type Car, meanOf, Refusal, tyreNamed } from "@rollbook/lib";
import type { Draw, Misconception } from "./question.js";
import { briskTurn } from "./set-up.js";
import type { Tell } from "./tell.js";

const degree = Math.PI / 180;
const seen = 1; // N

/** What the outside front tyre of a car gives at several leans into the corner. */
function outsideFront(car: Car, tell: Tell) {
  const tyre = tyreNamed(car.front.tyre.name);
  const pressure = meanOf(car.front.tyre.pressure);
  const load = axleLoadsOf(car, briskTurn(car)).front.load.right;
  const gripAt = (inclination: number) => tyre.peakSideForce({ load, pressure, inclination });
  const most = tyre.valid.inclination.maximum;
  const best = Math.round(bestInclination(tyre, { load, pressure }) / degree) * degree;
  if (best < 2 * degree || best > most - degree)
    throw new Refusal(
      "does-not-suit",
      "its tyres grip best at an end of the leans that are known of them.",
    );
  const forces = (...leans: number[]) =>
    leans.map((lean) => `${tell.newtons(gripAt(lean))} at ${tell.degrees(lean)}`).join(", ");
  return { load, gripAt, most, best, forces };
}

const first: Draw = (car, tell) => {
  const { load, gripAt, most, best, forces } = outsideFront(car, tell);
  const [upright, top, far] = [gripAt(0), gripAt(best), gripAt(most)];
  const all = `It can push with ${forces(0, best, most)}.`;
  return {
    ask: `In a corner the outside front tyre of this car carries ${tell.newtons(load)}. With the camber you set how far it leans into the corner, against the road. At which lean can it push hardest?`,
    choices: [
      {
        text: "Upright, 0°: its whole tread lies flat.",
        isSo: upright > top + seen && upright > far + seen,
        because: `${all} A pushing tyre bends under its rim; a little lean makes good for that.`,
        idea: "upright-is-best",
      },
      {
        text: `At the most of these, ${tell.degrees(most)}: more lean, more push.`,
        isSo: far > top + seen && far > upright + seen,
        because: `${all} Beyond the best lean the inner shoulder carries alone. And under braking, when the wheels do not lean into anything, all of it costs.`,
        idea: "more-camber-grips",
      },
      {
        text: `In between, near ${tell.degrees(best)}.`,
        isSo: top > upright + seen && top > far + seen,
        because: `${all} Camber has a top, like pressure. Which camber at rest gives that lean in the corner depends on roll and links.`,
      },
      {
        text: "It makes no odds: the load and the rubber are the same.",
        isSo: Math.max(upright, top, far) - Math.min(upright, top, far) <= seen,
        because: `${all} Lean decides which part of the tread carries.`,
        idea: "rubber-alone",
      },
    ],
  };
};

const twin: Draw = (car, tell) => {
  const { gripAt, most, best, forces } = outsideFront(car, tell);
  const more = Math.min(2 * degree, most - best);
  const step = Math.min(best, 3 * degree);
  const gained = gripAt(best) - gripAt(best - step);
  const further = gripAt(best + more) - gripAt(best);
  const all = `It can push with ${forces(best - step, best, best + more)}.`;
  return {
    ask: `More camber paid last time: with the outside front tyre leaning ${tell.degrees(best)} into the corner instead of ${tell.degrees(best - step)}, it can push with ${tell.newtons(gained)} more. What do another ${tell.degrees(more)} bring?`,
    choices: [
      {
        text: "About as much again for each degree.",
        isSo: further > 0.75 * gained * (more / step),
        because: `${all} What paid once need not pay twice: nobody sees from one step where the top is.`,
        idea: "more-camber-grips",
      },
      {
        text: "They take some away again.",
        isSo: further < -seen,
        because: `${all} The last step ended at the top; from there every way leads down.`,
      },
      {
        text: "Somewhat less each time, but always a little more.",
        isSo: further > seen && further <= 0.75 * gained * (more / step),
        because: `${all} The curve does flatten; but it flattens towards a top and then falls.`,
        idea: "camber-gain-fades",
      },
      {
        text: "Nothing, for better or worse.",
        isSo: Math.abs(further) <= seen,
        because: `${all} Near the top little happens, but further off it shows.`,
        idea: "rubber-alone",
      },
    ],
  };
};

export const moreCamberGrips: Misconception = {
  idea: "more-camber-grips",
  chapter: "04-roll-centre",
  first,
  twin,
};
