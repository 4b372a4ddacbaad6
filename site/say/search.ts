/** What the search says of itself. */
export const words = {
  title: "Search",
  description: "Find a word, a figure or a place in the course",
  opening: "Looks through every chapter, figure and word, on this device alone.",
  needs: "The search needs JavaScript. Without it, your browser’s own search works in the",
  wordList: "list of words",
  contents: "chapters",
  and: "and in the",
  what: "What are you looking for?",
  example:
    "Any name will do: sway bar, tire, wedge. The arrow keys go through the answers, Escape comes back.",
  loading: "Loading the index …",
  notLoaded: "The index did not load; try again with the course within reach.",
  nothing: (query: string) =>
    `Nothing for “${query}”. Try one word less, or look in the list of words.`,
  one: (query: string) => `1 place for “${query}”.`,
  many: (count: number, query: string) => `${count} places for “${query}”.`,
  first: (count: number, query: string) => `The first ${count} places for “${query}”.`,
  kinds: { section: "", figure: "Figure", word: "Word", page: "Page" },
  also: "Also called",
} as const;
