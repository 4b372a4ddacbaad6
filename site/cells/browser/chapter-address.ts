/**
 * The address of a place in a chapter such as `02-tyres.html#why`: as it is where this course has the
 * chapter, else in the course that has it; nothing where nobody said where that is.
 */
export function chapterAddress(place: string): string | undefined {
  const { chapters, rest } = document.documentElement.dataset;
  const [chapter = ""] = place.split(".html");
  if (chapters === undefined || chapters.split(" ").includes(chapter)) return place;
  return rest ? rest + place : undefined;
}
