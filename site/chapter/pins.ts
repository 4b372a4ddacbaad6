import type { Outputs } from "../kernel/run.js";

/** What a worked figure of a chapter must be, by its id. */
export type Pins = Readonly<
  Record<
    string,
    {
      /** SI, from plain arithmetic or a published source, never from lib. */
      readonly value: number;
      /** Where the value is from. */
      readonly from: string;
      /** Allowed relative difference; 1e-6 where absent, else with its reason in `from`. */
      readonly within?: number;
    }
  >
>;

/** Worked figures and exercise answers as the kernel gave them, by id. */
export function figuresIn(outputs: Outputs): Map<string, number> {
  const found = [...Object.values(outputs).flat().join("\n").matchAll(worked)];
  return new Map(found.map(([, id = "", value]) => [id, Number(value)]));
}

const worked = /id="([^"]+)" data-(?:worked|exercise)="([^"]+)"/g;

/** What is not as it is pinned, a sentence each. */
export function pinFaults(pins: Pins, figures: ReadonlyMap<string, number>): string[] {
  const known = Object.keys(pins);
  return [
    ...[...figures.keys()]
      .filter((id) => !known.includes(id))
      .map((id) => `${id} has no pin: work it out independently, or give its source.`),
    ...known.filter((id) => !figures.has(id)).map((id) => `The pin ${id} has no figure.`),
    ...Object.entries(pins).flatMap(([id, pin]) => differs(id, pin, figures.get(id))),
  ];
}

function differs(id: string, pin: Pins[string], figure: number | undefined): string[] {
  if (figure === undefined) return [];
  const { value, from, within = 1e-6 } = pin;
  const most = value === 0 ? within : within * Math.abs(value);
  if (Math.abs(figure - value) <= most) return [];
  return [`${id} is ${figure}, but its pin says ${value} (${from}).`];
}
