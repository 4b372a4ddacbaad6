import { show } from "../../ui/show.js";
import { Questions } from "./view/page.js";
import { WarmUp } from "./view/warm-up.js";

/** The same script serves its own page and, once they are wanted, the questions in a chapter. */
const { page = "" } = document.documentElement.dataset;
const main = document.getElementById("main");
if (page === "questions" && main) show(<Questions />, main);
for (const fold of document.querySelectorAll<HTMLElement>("details.warm-up")) {
  const place = document.createElement("div");
  fold.append(place);
  show(<WarmUp chapter={page} asks={fold.dataset.asks === "own" ? "own" : "earlier"} />, place);
}
