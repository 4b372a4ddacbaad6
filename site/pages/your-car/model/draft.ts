import { demoCar, withSoundKnown } from "@rollbook/lib";
import { numberFrom } from "../../../say/typed-number.js";
import type { UnitSystem } from "../../../say/units.js";
import { asDraft, type Draft, type Typed } from "../../../store/car-draft.js";
import { settled } from "./number.js";
import { type Content, type Path, shapeAt, valueAt, withValue } from "./path.js";

export { asDraft, type Draft, type Typed };

export const draftOf = (id: string, base: object, own: readonly Path[] = []): Draft => ({
  id,
  base: base as Content,
  typed: {},
  own,
  removed: {},
});

/** The draft with something typed at a place. */
export function withTyped(draft: Draft, path: Path, text: string, units: UnitSystem): Draft {
  return { ...draft, typed: { ...draft.typed, [path]: { text, units } } };
}

/** The draft with a part put in or taken out; one taken out is kept, as is what was typed in it. */
export function withPart(draft: Draft, path: Path, part: unknown): Draft {
  const gone = part === undefined ? { [path]: valueAt(draft.base, path) } : {};
  const removed = { ...draft.removed, ...gone };
  return { ...draft, base: withValue(draft.base, path, part), removed };
}

/** The draft with values taken as the reader's own, though they are the demo car's. */
export const confirmed = (draft: Draft, paths: readonly Path[]): Draft => ({
  ...draft,
  own: [...new Set([...draft.own, ...paths])],
});

/** The draft without one entry of a list; what was typed or is known of later ones moves up with them. */
export function withoutEntry(draft: Draft, list: Path, gone: number): Draft {
  const entries = valueAt(draft.base, list) as readonly unknown[];
  const { base, ...shorter } = withPart(draft, list, entries.toSpliced(gone, 1));
  const known = base.known && movedUp(base.known as Content, list, gone);
  return {
    ...shorter,
    base: withValue(base, "known", known),
    typed: movedUp(draft.typed, list, gone),
  };
}

/** What stands by place, without one entry of a list: what is about later ones moves up with them. */
function movedUp<T>(byPlace: Readonly<Record<Path, T>>, list: Path, gone: number) {
  const moved = Object.entries(byPlace).flatMap(([path, about]) => {
    const [, index, column] = path.startsWith(`${list}.`)
      ? (/^(\d+)\.(\w+)$/.exec(path.slice(list.length + 1)) ?? [])
      : [];
    if (index === undefined || Number(index) < gone) return [[path, about]];
    return Number(index) === gone ? [] : [[`${list}.${Number(index) - 1}.${column}`, about]];
  });
  return Object.fromEntries(moved) as Record<Path, T>;
}

/** What a place holds by what was typed there: a value, undefined for left empty, NaN for unreadable. */
export function valueTyped(path: Path, { text, units }: Typed): unknown {
  const shape = shapeAt(path);
  if (shape?.type !== "number") return text === "" && shape?.optional ? undefined : text;
  if (text.trim() === "") return undefined;
  const value = numberFrom(text, shape.quantity, units);
  return value === undefined ? Number.NaN : settled(value, shape);
}

const parentOf = (path: Path): Path => path.split(".").slice(0, -1).join(".");

/** Whether a place can hold anything: the part around it is there, or may be made for it. */
function hasRoom(content: Content, path: Path): boolean {
  const parent = parentOf(path);
  if (parent === "" || valueAt(content, parent) !== undefined) return true;
  const shape = shapeAt(parent);
  return shape?.type === "group" && Object.values(shape.fields).every(({ optional }) => optional);
}

/** The content of the car file that a draft stands for; an unreadable number is NaN in it. */
export function contentOf({ base, typed }: Draft): Content {
  const content = Object.entries(typed).reduce(
    (content, [path, given]) =>
      hasRoom(content, path) ? withValue(content, path, valueTyped(path, given)) : content,
    base,
  );
  return withSoundKnown(content); // an entry goes with the number it is about, and comes back with it
}

/** A car to start from: the workbook's own, under another name. */
export const copyOfDemo = (id: string, name: string): Draft =>
  draftOf(id, { ...withoutNotes(demoCar), name });

function withoutNotes<Car extends { notes?: string }>({ notes: _, ...car }: Car) {
  return car;
}
