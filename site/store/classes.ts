import { computed } from "@preact/signals";
import { type Car, type CarClass, carInClass, classFromJson, formatClass } from "@rollbook/lib";
import { documentOf } from "@rollbook/page";

/** Classes on this device, and which of them the course goes by; none: no class. */
export interface Classes {
  readonly classes: readonly CarClass[];
  readonly current?: string;
}

/** What of kept classes is sound; one that is not, is kept aside. */
export function asClasses(kept: unknown, aside: (one: unknown) => void): Classes | undefined {
  const { classes, current } = (kept ?? {}) as { classes?: unknown; current?: unknown };
  if (!Array.isArray(classes)) return undefined;
  const sound = classes.flatMap((one) => {
    const { carClass } = classFromJson(one);
    if (!carClass) aside(one);
    return carClass ?? [];
  });
  return typeof current === "string" ? { classes: sound, current } : { classes: sound };
}

/** The classes as they are kept: whole files, with the kind that their reader asks for. */
interface KeptClasses {
  readonly classes: readonly unknown[];
  readonly current?: string;
}

const asKept = ({ classes, ...rest }: Classes): KeptClasses => ({
  classes: classes.map((one) => JSON.parse(formatClass(one)) as unknown),
  ...rest,
});

const kept = documentOf<KeptClasses>({
  key: "classes",
  empty: { classes: [] },
  read: (value, aside) => {
    const read = asClasses(value, aside);
    return read && asKept(read);
  },
});

const sound = computed(() => asClasses(kept.now.value, () => {}) ?? { classes: [] });

/** The classes of this device. */
export const classesNow = (): Classes => sound.value;

export const setClasses = (classes: Classes): Promise<boolean> => kept.set(asKept(classes));

/** Looks at the second copy too. */
export const openClasses = (): Promise<void> => kept.open();

/** The class that the course goes by. */
export function chosenClass(): CarClass | undefined {
  const { classes, current } = classesNow();
  return classes.find(({ name }) => name === current);
}

/** A car as it runs in the chosen class; as it is where none is chosen. */
export function inChosenClass(car: Car): Car {
  const chosen = chosenClass();
  return chosen === undefined ? car : carInClass(car, chosen);
}
