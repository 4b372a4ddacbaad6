/** American and trade spellings, word by word, and how the course writes them. */
const spellings: Readonly<Record<string, string>> = {
  tire: "tyre",
  center: "centre",
  meter: "metre",
  liter: "litre",
  color: "colour",
  behavior: "behaviour",
  gray: "grey",
  curb: "kerb",
  caster: "castor",
  gage: "gauge",
  aluminum: "aluminium",
  maneuver: "manoeuvre",
  modeling: "modelling",
  traveling: "travelling",
  leveling: "levelling",
};

/** One and many are one word; "s" goes from all but words such as "mass" and "gas". */
const single = (word: string): string =>
  /[^su]s$/.test(word) && word.length > 3 ? word.slice(0, -1) : word;

const british = (word: string): string =>
  spellings[word] ?? word.replace(/iz(e|ed|er|ing|ation)$/, "is$1");

/** The words of a text as the search compares them: small letters, no accents, one spelling, no plural. */
export function fold(text: string): string[] {
  const bare = text
    .toLowerCase()
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .replace(/[’']s?\b/g, "");
  const words = bare.match(/[\p{L}\p{N}]+/gu) ?? [];
  return words.map((word) => british(single(word)));
}
