const minutes = (count: number): string => `${Math.max(1, Math.round(count))} min`;

/** What a chapter's page says of itself. */
export const chapterWords = {
  inAll: (core: number, all: number) =>
    `The core takes about ${minutes(core)}, everything about ${minutes(all)}.`,
  part: (isDeeper: boolean, took: number) => `${isDeeper ? "Deeper" : "Core"} · ${minutes(took)}`,
  mixed: (core: number, deeper: number) =>
    `The first two are core · ${minutes(core)}; the others go deeper · ${minutes(deeper)}`,
  took: (core: number, all: number) => `${minutes(core)}, with everything ${minutes(all)}`,
} as const;
