/** The views of the workshop, in the order of a day. */
export const views = ["plan", "sheets", "run", "report", "talk", "log"] as const;
/** Views that no row of links shows: of a paddock, and the wall of a second window. */
export const otherViews = ["join", "desk", "wall"] as const;
export type View = (typeof views)[number] | (typeof otherViews)[number];

/** Which view an address asks for; what it brings along stands after a question mark. */
export const viewOf = (hash: string): View =>
  [...views, ...otherViews].find((view) => hash.replace(/\?.*$/s, "") === `#${view}`) ?? "plan";
