import { show } from "../../ui/show.js";
import { Questions } from "./view/page.js";
import { WarmUp } from "./view/warm-up.js";

/** The same script serves its own page and, once they are wanted, the questions at the top of a chapter. */
const { page = "" } = document.documentElement.dataset;
const main = document.getElementById("main");
const fold = document.querySelector<HTMLElement>("details.warm-up");
if (page === "questions" && main) show(<Questions />, main);
else if (fold) {
  const place = document.createElement("div");
  fold.append(place);
  show(<WarmUp chapter={page} />, place);
}
