import { chapterWork } from "@rollbook/page";

/** What there is to do in the chapters, as the page had it before it was drawn. */
export const work = chapterWork();
