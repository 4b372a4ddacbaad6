/** The views of the workshop, in the order of a day. */
export const views = ["plan", "sheets", "run", "report", "talk", "log"] as const;
export type View = (typeof views)[number];

/** Which view an address asks for; what it brings along stands after a question mark. */
export const viewOf = (hash: string): View =>
  views.find((view) => hash.replace(/\?.*$/s, "") === `#${view}`) ?? "plan";
