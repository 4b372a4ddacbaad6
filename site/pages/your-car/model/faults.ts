import { carFromJson, demoCar } from "@rollbook/lib";
import { isBareLength } from "../../../say/typed-number.js";
import type { UnitSystem } from "../../../say/units.js";
import { faultWords as words } from "../../../say/your-car/faults.js";
import { nameOf } from "../../../say/your-car/places.js";
import { contentOf, type Draft } from "./draft.js";
import { isNumber, type Leaf, leavesOf } from "./leaves.js";
import { isTaken, shownNumber, shownRangeOf } from "./number.js";
import { type Content, type Path, shapeAt, valueAt } from "./path.js";

/** What is wrong with one place, in a sentence for the reader. */
export interface Fault {
  readonly path: Path;
  readonly sentence: string;
}

/**
 * All that is wrong with a draft: every field first, then what only shows when fields are seen together.
 *
 * @param taken - names of the reader's other cars
 */
export function faultsOf(draft: Draft, taken: readonly string[], units: UnitSystem): Fault[] {
  const content = contentOf(draft);
  const fields = leavesOf(content).flatMap((leaf) => faultOf(leaf, draft, units));
  const faults = [...nameFaults(content, taken), ...fields];
  return faults.length > 0 ? faults : wholeFaults(content);
}

function nameFaults({ name }: Content, taken: readonly string[]): Fault[] {
  const fault = (sentence: string) => [{ path: "name", sentence }];
  if (typeof name !== "string" || name.trim() === "") return fault(words.nameless);
  if (name.length > longestName) return fault(words.nameTooLong(longestName));
  if (name === demoCar.name) return fault(words.nameOfDemo(name));
  return taken.includes(name) ? fault(words.nameTaken(name)) : [];
}

const longestName = 60;

function faultOf(leaf: Leaf, { typed }: Draft, units: UnitSystem): Fault[] {
  const { path, value } = leaf;
  if (!isNumber(leaf)) return textFault(leaf);
  const { shape } = leaf;
  if (typeof value === "number" && isTaken(value, shape)) return [];
  const shown = typeof value === "number" ? shownNumber(value, shape, units) : "";
  if (isBareLength(typed[path]?.text ?? "", shape.quantity, units))
    return [{ path, sentence: words.asLength(nameOf(path)) }];
  const given = (typed[path]?.text ?? shown).replace(/^-/, "−");
  const range = shownRangeOf(shape, units);
  const takes = shape.whole
    ? words.takesWhole(nameOf(path), range)
    : words.takes(nameOf(path), range);
  return [{ path, sentence: given.trim() === "" ? words.left(takes) : words.not(takes, given) }];
}

function textFault({ path, shape, value }: Leaf): Fault[] {
  if (path === "name" || shape.type !== "text") return [];
  const { choices } = shape;
  if (choices === undefined) return typeof value === "string" ? [] : [fault(path, "")];
  return choices.includes(String(value)) ? [] : [fault(path, choices.join(", "))];
}

const fault = (path: Path, choices: string): Fault => ({
  path,
  sentence: words.takes(nameOf(path), choices),
});

/** What the car file's own checks say of fields that are each in their range. */
function wholeFaults(content: Content): Fault[] {
  return (carFromJson(content).faults ?? []).map((told) => {
    const [, path = "", sentence = told] =
      /^((?:front|rear|adjusters)[\w.]*):? (.*)$/.exec(told) ?? [];
    return valueAt(content, path) === undefined && shapeAt(path) === undefined
      ? { path: "body.behindFrontAxle", sentence: told }
      : { path, sentence: `${nameOf(path)}: ${sentence}` };
  });
}
