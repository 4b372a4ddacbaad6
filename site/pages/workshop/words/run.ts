/** What the view says. */
export const run = {} as const;
