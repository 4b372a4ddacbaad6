import type { SitePage } from "../build/site-pages.js";
import { searchPage } from "./search/page.js";
import { wordsPage } from "./words/page.js";

/** The pages beside the chapters. */
export const pages: readonly SitePage[] = [wordsPage, searchPage];
