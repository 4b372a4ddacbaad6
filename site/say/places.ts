/** The pages of the course by what they are called. */
export const placeNames = {
  index: "Chapters",
  "your-car": "Your car",
  measure: "Measure",
  workshop: "Workshop",
  practice: "Practice",
  map: "Map",
  questions: "Questions",
  words: "Words",
  search: "Search",
  share: "Share",
} as const;

export type PlaceName = keyof typeof placeNames;

/** Whom the menu is for; empty for whoever has not said. */
export const roles = ["instructor", "learner", "organiser"] as const;
export type Role = (typeof roles)[number] | "";

/** The links that stand beside the menu, the most wanted first: a phone has room for two. */
export function shortcutsFor(role: Role): readonly PlaceName[] {
  if (role === "instructor") return ["workshop", "your-car", "index", "map"];
  if (role === "learner") return ["index", "practice", "questions", "words"];
  if (role === "organiser") return ["your-car", "share", "index", "workshop"];
  return ["index", "your-car", "workshop", "practice", "search"];
}
