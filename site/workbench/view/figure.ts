import {
  announcer,
  element,
  livePicture,
  type Mark,
  numbersFold,
  words as pageWords,
  slider,
  spell,
  startValues,
  tablesOf,
} from "@rollbook/page";
import type { FigureOutput, Reply } from "../model/results.js";

type Values = Readonly<Record<string, number>>;
type Draw = (values: Values) => Promise<Reply | string>;

const marksThemselves = { draw: (marks: readonly Mark[]) => marks };

/** Sliders under a figure, and a way back to where they start; nothing for a figure without inputs. */
function controls(id: string, inputs: FigureOutput["inputs"], take: (values: Values) => void) {
  const start: Values = startValues(inputs);
  let values = start;
  const sliders = Object.entries(inputs).map(([key, parameter], index) => {
    const made = slider(`${id}-${index}`, parameter, (value) => {
      values = { ...values, [key]: value };
      take(values);
    });
    return { key, made };
  });
  const toStart = () => {
    values = start;
    for (const { key, made } of sliders) made.set(start[key] ?? Number.NaN);
    take(values);
  };
  toStart();
  if (sliders.length === 0) return [];
  const back = element("button", { type: "button", class: "reset" }, pageWords.reset);
  back.addEventListener("click", toStart);
  return [element("fieldset", { class: "controls" }, ...sliders.map(({ made }) => made.row), back)];
}

/** Calls for the newest values only, one call at a time. */
function newestOnly(call: (values: Values) => Promise<void>): (values: Values) => void {
  let waiting: Values | undefined;
  let busy = false;
  return async (values) => {
    waiting = values;
    if (busy) return;
    busy = true;
    while (waiting) {
      const next: Values = waiting;
      waiting = undefined;
      await call(next);
    }
    busy = false;
  };
}

/** A figure of edited cells: its sliders are the page's, its marks and sentence come from the sandbox. */
export function liveFigure(id: string, spec: FigureOutput, draw: Draw): HTMLElement {
  const says = element("p", { class: "says" });
  const tell = (sentence: string) => {
    says.before(element("p", { class: "fault", role: "alert" }, sentence));
  };
  const pictures = spec.panels.map((panel) =>
    livePicture({ ...panel, ...marksThemselves }, spec.title, tell),
  );
  const aloud = announcer();
  const say = (sentence: string) => {
    if (says.textContent !== "") aloud.say(sentence); // the first is read where it stands
    says.textContent = sentence;
  };
  const numbers = numbersFold(pageWords.numbersOf(spell(spec.title)));
  const redraw = newestOnly(async (values) => {
    const drawn = await draw(values);
    if (typeof drawn === "string") say(pageWords.notDrawn(drawn));
    else if (drawn.kind === "drawn") {
      pictures.forEach(({ paint }, index) => {
        paint(drawn.panels[index] ?? []);
      });
      say(spell(drawn.says));
      numbers.show(() =>
        spec.panels.flatMap((panel, index) =>
          tablesOf({ ...panel, ...marksThemselves }, drawn.panels[index] ?? []),
        ),
      );
    }
  });
  return element(
    "figure",
    { class: "figure", id },
    element("figcaption", {}, spell(spec.title)),
    element("div", { class: "panels" }, ...pictures.map(({ svg }) => svg)),
    says,
    ...controls(id, spec.inputs, redraw),
    numbers.fold,
    aloud.node,
  );
}
