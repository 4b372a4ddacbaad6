import { element } from "@rollbook/page";
import { words } from "../words.js";

/** Copies the address of the map as it is; where the browser refuses, it goes into the address bar. */
export function linkButton(end: () => string) {
  const button = element("button", { type: "button" }, words.link);
  const told = element("span", { class: "told", role: "status" });
  button.addEventListener("click", async () => {
    const address = location.href.replace(/#.*|$/s, end());
    try {
      await navigator.clipboard.writeText(address);
      told.textContent = words.linked;
    } catch {
      history.replaceState(null, "", address);
      told.textContent = words.inBar;
    }
  });
  return {
    nodes: [button, told],
    forget: () => {
      told.textContent = "";
    },
  };
}
