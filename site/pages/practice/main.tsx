import { placeOf } from "@rollbook/page";
import { show } from "../../ui/show.js";
import { askedFor } from "./puzzle-for.js";
import { open, Play } from "./view/play.js";

const place = placeOf("practice");
if (place) {
  open(askedFor(location.hash));
  show(<Play />, place);
  addEventListener("hashchange", () => {
    if (location.hash.startsWith("#?")) open(askedFor(location.hash));
  });
}
