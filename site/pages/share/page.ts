import type { SitePage } from "../../build/site-pages.js";
import { words } from "../../say/share.js";

export const sharePage: SitePage = {
  name: "share",
  title: words.title,
  description: words.description,
  main: `<h1>${words.title}</h1>
<p>${words.opening}</p>
<div id="share"><p>${words.needs}</p></div>`,
};
