import { formatAlike } from "../../shown-range.js";
import type { UnitSystem } from "../../units.js";
import type { Report } from "../log/report.js";
import type { Surface } from "../plan/venue.js";

/** How what was felt lies beside what the model says. None of them says that a driver was wrong. */
export type Verdict =
  | "match"
  | "opposite"
  | "nothing felt"
  | "other phase"
  | "felt, not predicted"
  | "confounded"
  | "no comparison";

/** All that is known about one cell of two runs. */
export interface FeltFacts {
  /** How many things were changed between the runs. */
  readonly tested: number;
  /** m/s², above 0 towards the front */
  readonly predicted: number;
  /** The sign of what should be felt; 0 when the shift is too small to feel. */
  readonly expected: number;
  /** Points, above 0 towards the front; nothing where it cannot be told. */
  readonly felt?: number;
  /** The sign of what was felt in the other phases of the corner. */
  readonly elsewhere: number;
  /** The shift is less than twice the least that is felt. */
  readonly nearThreshold: boolean;
  /** An inner wheel is in the air at the limit. */
  readonly lifted: boolean;
  readonly before?: Report;
  readonly report: Report;
  readonly surface?: Surface;
  /** The units of the sentences. */
  readonly system: UnitSystem;
}

/** Why felt and predicted may lie as they do, one sentence each, the likelier ones first. */
export function reasonsFor(verdict: Verdict, facts: FeltFacts): string[] {
  return [...ofVerdict(verdict, facts), ...(verdict === "match" ? [] : ofCircumstances(facts))];
}

function ofVerdict(
  verdict: Verdict,
  { tested, predicted, elsewhere, system }: FeltFacts,
): string[] {
  const said = `The model moves balance ${inWords(predicted, system)}.`;
  switch (verdict) {
    case "match":
      return [said];
    case "confounded":
      return [
        `${tested} things were changed at once: nobody can say which of them was felt. Drive them one by one.`,
      ];
    case "no comparison":
      return ["There is no report on this place from the run before, so nothing can be compared."];
    case "other phase":
      return [
        said,
        `The shift ${towards(elsewhere)} was felt in another part of this corner: where a phase ends and the next begins is not the same for every driver.`,
      ];
    case "felt, not predicted":
      return [said, ...(tested === 0 ? [nothingChanged] : [])];
    case "opposite":
    case "nothing felt":
      return [said];
  }
}

const nothingChanged =
  "Nothing was changed between these runs: this is how much feeling moves by itself, with tyres, fuel, track and line. Measure the other runs against it.";

function ofCircumstances(facts: FeltFacts): string[] {
  const { before, report, surface } = facts;
  const said: readonly (readonly [boolean, string])[] = [
    [
      before?.input !== undefined && before.input !== report.input,
      `The driver was ${before?.input} before and ${report.input ?? "did not say what"} now: another input is another test.`,
    ],
    [
      facts.expected !== 0 && facts.nearThreshold,
      "The predicted shift is less than twice what can just be felt: some drivers feel it, some do not.",
    ],
    [
      facts.lifted,
      "At the limit an inner wheel is in the air here: a little more or less grip then turns the picture over.",
    ],
    [surface === "rough", "The road is rough here; the model knows only smooth ones."],
    [
      report.confidence === "a guess" || before?.confidence === "a guess",
      "One of the two reports was a guess: drive it again and ask before the lap times are known.",
    ],
    [
      report.howOften === "once" || report.howOften === "sometimes",
      "It did not happen every lap: traffic, line or speed may have been different.",
    ],
  ];
  return said.flatMap(([holds, sentence]) => (holds ? [sentence] : []));
}

function inWords(shift: number, system: UnitSystem): string {
  if (Math.abs(shift) < 0.005) return "by nothing here";
  const amount = formatAlike("acceleration", Math.abs(shift), 2, system);
  return `by ${amount} ${towards(shift)} here`;
}

function towards(shift: number): string {
  return shift > 0 ? "towards the front sliding first" : "towards the rear sliding first";
}
