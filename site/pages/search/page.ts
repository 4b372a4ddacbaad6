import type { SitePage } from "../../build/site-pages.js";
import { words } from "../../say/search.js";

export const searchPage: SitePage = {
  name: "search",
  title: words.title,
  description: words.description,
  main: `<h1>${words.title}</h1>
<p>${words.opening}</p>
<div id="search"><p>${words.needs} <a href="words.html">${words.wordList}</a> ${words.and}
<a href="index.html#chapters">${words.contents}</a>.</p></div>`,
};
