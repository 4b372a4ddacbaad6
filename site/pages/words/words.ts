/** What the page of words says of itself. */
export const words = {
  title: "Words",
  description: "The words of the course, each explained in one sentence",
  opening:
    "What people in the paddock say, and what they mean by it. Each word is explained once; the link leads to the place in the course that uses it.",
  also: "Also called",
  symbol: "Written",
  standard: "ISO 8855 and SAE J670 call it",
  seeAt: "Explained in",
  usedIn: "Used in",
  letters: "First letters",
} as const;
