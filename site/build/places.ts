/** The pages that every page links to at its head. */
export const places: readonly { readonly name: string; readonly label: string }[] = [
  { name: "index", label: "Chapters" },
  { name: "your-car", label: "Your car" },
  { name: "workshop", label: "Workshop" },
  { name: "practice", label: "Practice" },
  { name: "map", label: "Map" },
  { name: "questions", label: "Questions" },
  { name: "words", label: "Words" },
  { name: "search", label: "Search" },
  { name: "share", label: "Share" },
];
