import { signal } from "@preact/signals";
import { canonical } from "@rollbook/lib";
import { type BandsOf, type BandsSoFar, bandsBeside } from "./bands.js";

const MOST = 24; // that are remembered: the cars and changes of a day

const bands = bandsBeside();
const known = signal<ReadonlyMap<string, BandsSoFar>>(new Map());
const under = signal<string | undefined>(undefined);

/** What tells one ask from another. */
export const keyOf = (of: BandsOf): string => canonical(of);

/** What is known of an ask, from as many samples as there was time for. */
export const bandsOf = (key: string): BandsSoFar | undefined => known.value.get(key);

export const isUnderWay = (key: string): boolean => under.value === key;

/** Works bands out beside the page; what was under way is dropped, what it told stays. */
export function workOut(of: BandsOf, tell = (_: BandsSoFar): void => {}): void {
  const key = keyOf(of);
  under.value = key;
  bands.begin(of, (so) => {
    const others = [...known.value].filter(([other]) => other !== key).slice(1 - MOST);
    known.value = new Map([...others, [key, so]]);
    if (so.count >= so.of) under.value = undefined;
    tell(so);
  });
}

/** Stops what is under way. */
export function stop(): void {
  under.value = undefined;
  bands.drop();
}
