import { signal } from "@preact/signals";
import { documentOf, reader } from "@rollbook/page";
import { words } from "../words.js";

const { kinds, papers } = words.sheets;

export type Kind = keyof typeof kinds;
type PaperSize = keyof typeof papers;

/** What can be printed. */
export const allKinds = Object.keys(kinds) as Kind[];
export const paperSizes = Object.keys(papers) as PaperSize[];

/** What is to be printed, and on which paper; the answer key is asked for anew each time. */
interface Chosen {
  readonly kinds: readonly Kind[];
  readonly paper: PaperSize;
}

const first: Chosen = { kinds: ["run", "cards"], paper: reader.units === "us" ? "letter" : "a4" };

const kept = documentOf<Chosen>({
  key: "workshop/sheets",
  empty: first,
  read: (value) => {
    const { kinds, paper } = (value ?? {}) as Partial<Chosen>;
    return Array.isArray(kinds) && paperSizes.some((size) => size === paper)
      ? {
          kinds: allKinds.filter((kind) => kind !== "key" && kinds.includes(kind)),
          paper: paper as PaperSize,
        }
      : undefined;
  },
});

export const chosen = kept.now;

export const choosePaper = (paper: PaperSize): void => void kept.set({ ...chosen.value, paper });

const withKey = signal(false);
/** Leaves the key out until it is asked for again. */
export function forgetKey(): void {
  withKey.value = false;
}

export const isChosen = (kind: Kind): boolean =>
  kind === "key" ? withKey.value : chosen.value.kinds.includes(kind);

/** Has a kind of sheet printed or not. */
export function choose(kind: Kind, wanted: boolean): void {
  if (kind === "key") {
    withKey.value = wanted;
    return;
  }
  const others = chosen.value.kinds.filter((one) => one !== kind);
  void kept.set({ ...chosen.value, kinds: wanted ? [...others, kind] : others });
}
