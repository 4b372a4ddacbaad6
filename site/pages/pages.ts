import type { SitePage } from "../build/site-pages.js";
import { mapPage } from "./map/page.js";
import { measurePage } from "./measure/page.js";
import { practicePage } from "./practice/page.js";
import { questionsPage } from "./questions/page.js";
import { ridePage } from "./ride/page.js";
import { searchPage } from "./search/page.js";
import { sharePage } from "./share/page.js";
import { wordsPage } from "./words/page.js";
import { workshopPage } from "./workshop/page.js";
import { yourCarPage } from "./your-car/page.js";

/** The pages beside the chapters. */
export const pages: readonly SitePage[] = [
  yourCarPage,
  measurePage,
  ridePage,
  workshopPage,
  practicePage,
  mapPage,
  questionsPage,
  wordsPage,
  searchPage,
  sharePage,
];
