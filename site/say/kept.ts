/** What the device keeps, by the beginning of its key, in words. */
const names: readonly (readonly [string, string])[] = [
  ["cars", "your cars"],
  ["classes", "your classes"],
  ["file-pieces", "codes that wait for the others"],
  ["car-", "a car that is being typed"],
  ["filed:", "your prediction"],
  ["seen:", "what you saw in a figure"],
  ["exercise:", "your answers to an exercise"],
  ["answers", "your answers"],
  ["practice-rounds", "your rounds of practice"],
  ["cells:", "cells that you edited"],
  ["workshop/", "what stands open in the workshop"],
];

const inWords = (keys: readonly string[]): string => {
  const named = keys.map(
    (key) => names.find(([start]) => key.startsWith(start))?.[1] ?? "a choice of yours",
  );
  return [...new Set(named)].join(", ");
};

/** What the foot of a page says of the device. */
export const keptWords = {
  refused: (keys: readonly string[]) =>
    `This device is full or keeps nothing. Not kept: ${inWords(keys)}. It is held until you close this page.`,
  aside: (keys: readonly string[]) =>
    `Something kept on this device cannot be read as it is: ${inWords(keys)}. It was put aside, and nothing was deleted.`,
  save: "Save it as a file",
  letGo: "Let it go",
  unkeptName: "not-kept.json",
  asideName: "put-aside.json",
} as const;
