import { words } from "../words.js";
import { copied } from "./copy.js";
import { element } from "./element.js";

/** Only faults of our own scripts: an extension of the browser may throw what it likes. */
const isOurs = (error: unknown): error is Error =>
  error instanceof Error && (error.stack ?? "").includes(location.href.replace(/[^/]*$/, ""));

/** What somebody who mends the program needs: where, what, and on which page. */
const toldOf = (error: Error): string =>
  [location.href, navigator.userAgent, error.stack ?? String(error)].join("\n");

function copyButton(text: HTMLTextAreaElement): HTMLButtonElement {
  const button = element("button", { type: "button" }, words.copyFault);
  button.addEventListener("click", async () => {
    text.select(); // where the clipboard is closed to a page, a hand copies what is selected
    button.textContent = (await copied(text.value)) ? words.faultCopied : words.faultSelected;
  });
  return button;
}

/** Says in a sentence that a part of the page has stopped, and offers the fault to be copied: the first one. */
export function watchForFaults(): void {
  let said = false;
  const tell = (error: unknown): void => {
    if (said || !isOurs(error)) return;
    said = true;
    const label = { "aria-label": words.faultText, readonly: true, rows: 4 };
    const text = element("textarea", label, toldOf(error));
    const notice = element("div", { class: "program-fault", role: "alert" });
    notice.append(element("p", {}, words.programFault), text, copyButton(text));
    document.querySelector("main")?.prepend(notice);
  };
  addEventListener("error", ({ error }) => tell(error));
  addEventListener("unhandledrejection", ({ reason }) => tell(reason));
}
