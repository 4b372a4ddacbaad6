/** The script of a page that lists cells: offers to edit them, and loads the editor when asked. */
import { element, ownScript } from "@rollbook/page";
import { prefix } from "./model/link-prefix.js";
import { words } from "./words.js";

const button = element("button", { type: "button" }, words.open);
const told = element("span", { role: "status" });
const bar = element("div", { class: "bench-bar" }, button, told);

function load(): void {
  button.disabled = true;
  told.textContent = words.opening;
  const script = ownScript("workbench.js");
  script.addEventListener("error", () => {
    button.disabled = false;
    told.textContent = words.notLoaded;
  });
  document.head.append(element("link", { rel: "stylesheet", href: "workbench.css" }), script);
}

document.querySelector(".listing")?.before(bar);
button.addEventListener("click", load);
if (location.hash.startsWith(prefix)) load();
addEventListener("hashchange", () => {
  if (location.hash.startsWith(prefix)) location.reload();
});
