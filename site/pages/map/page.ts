import type { SitePage } from "../../build/site-pages.js";
import { words } from "../../say/map.js";

export const mapPage: SitePage = {
  name: "map",
  title: words.title,
  description: words.description,
  main: `<h1>${words.title}</h1>
<p>${words.lead}</p>
<div id="map"><p>${words.needs}</p></div>`,
};
