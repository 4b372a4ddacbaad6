/** The views of the workshop, in the order of a day. */
export const views = ["plan", "sheets", "run", "report", "talk", "log"] as const;
/** Views that only a paddock has. */
export const paddockViews = ["join", "desk"] as const;
export type View = (typeof views)[number] | (typeof paddockViews)[number];

/** Which view an address asks for; what it brings along stands after a question mark. */
export const viewOf = (hash: string): View =>
  [...views, ...paddockViews].find((view) => hash.replace(/\?.*$/s, "") === `#${view}`) ?? "plan";
