/** What the view says. */
export const sheets = {} as const;
