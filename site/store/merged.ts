/**
 * What two open pages made of one value, brought together: field by field, entry by entry. Where both
 * changed the same one, mine stands.
 *
 * @param base - the value that both began from
 */
export function merged(base: unknown, mine: unknown, theirs: unknown): unknown {
  if (isSame(base, mine)) return theirs;
  if (isSame(base, theirs) || isSame(mine, theirs)) return mine;
  if (mine === undefined || theirs === undefined) return mine ?? theirs; // changed here, taken out there
  if (isList(base) && isList(mine) && isList(theirs)) return mergedLists(base, mine, theirs);
  if (isGroup(mine) && isGroup(theirs))
    return mergedGroups(isGroup(base) ? base : {}, mine, theirs);
  return mine;
}

type Group = Readonly<Record<string, unknown>>;
type List = readonly unknown[];

/** Whether two values would be kept as the same text. */
export const isSame = (one: unknown, other: unknown): boolean =>
  one === other || JSON.stringify(one) === JSON.stringify(other);
const isList = (value: unknown): value is List => Array.isArray(value);
const isGroup = (value: unknown): value is Group =>
  typeof value === "object" && value !== null && !isList(value);
const own = (group: Group, name: string) => (Object.hasOwn(group, name) ? group[name] : undefined);

function mergedGroups(base: Group, mine: Group, theirs: Group): Group {
  const names = new Set([...Object.keys(theirs), ...Object.keys(mine)]);
  const fields = [...names].map((name) => [
    name,
    merged(own(base, name), own(mine, name), own(theirs, name)),
  ]);
  return Object.fromEntries(fields.filter(([, value]) => value !== undefined));
}

function mergedLists(base: List, mine: List, theirs: List): List {
  const keys = [base, mine, theirs].map(keysOf);
  if (keys.every((of) => of !== undefined)) {
    const [before, here, there] = keys.map((of, i) => byKey(of, [base, mine, theirs][i] ?? []));
    return Object.values(mergedGroups(before ?? {}, here ?? {}, there ?? {}));
  }
  return mergedEdits(base, mine, theirs);
}

/** What tells the entries of a list apart: their ids or names; nothing where they have none. */
function keysOf(list: List): readonly string[] | undefined {
  const keys = list.map((entry) => (isGroup(entry) ? (entry.id ?? entry.name) : undefined));
  const told = keys.every((key) => typeof key === "string") && new Set(keys).size === keys.length;
  return told ? (keys as string[]) : undefined;
}

const byKey = (keys: readonly string[] = [], list: List): Group =>
  Object.fromEntries(keys.map((key, i) => [` ${key}`, list[i]])); // a number as a key would come first

/** One stretch of the base, and what stands there instead. */
interface Edit {
  readonly from: number;
  readonly to: number;
  readonly entries: List;
}

function editOf(base: List, list: List): Edit {
  const shorter = Math.min(base.length, list.length);
  let from = 0;
  while (from < shorter && isSame(base[from], list[from])) from += 1;
  let behind = 0;
  while (behind < shorter - from && isSame(base.at(-1 - behind), list.at(-1 - behind))) behind += 1;
  return { from, to: base.length - behind, entries: list.slice(from, list.length - behind) };
}

const withEdit = (list: List, { from, to, entries }: Edit, by = 0): List => [
  ...list.slice(0, from + by),
  ...entries,
  ...list.slice(to + by),
];

/** Two edits of one list where they do not touch the same entries; else entry by entry, or mine. */
function mergedEdits(base: List, mine: List, theirs: List): List {
  const [here, there] = [editOf(base, mine), editOf(base, theirs)];
  const grown = there.entries.length - (there.to - there.from);
  if (there.to <= here.from) return withEdit(theirs, here, grown);
  if (here.to <= there.from) return withEdit(theirs, here);
  if (base.length !== mine.length || base.length !== theirs.length) return mine;
  return base.map((entry, i) => merged(entry, mine[i], theirs[i]));
}
