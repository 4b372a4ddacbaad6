/** What the view says. */
export const talk = {} as const;
