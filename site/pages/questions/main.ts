import { openPage } from "./view/page.js";
import { warmUp } from "./view/warm-up.js";

/** The same script serves its own page and, once they are wanted, the questions at the top of a chapter. */
const warmUpPlace = document.querySelector<HTMLElement>("details.warm-up");
if (document.documentElement.dataset.page === "questions") openPage();
else if (warmUpPlace) warmUp(warmUpPlace);
