/** The entry of the workbench: a chapter's cells in editors, run in a sandbox. */
import { addressCopied, element } from "@rollbook/page";
import { linkEndOf, longestLinkEnd } from "./model/share.js";
import { type CellView, cellView } from "./view/cell.js";
import { editsOf, keepOnDevice, takeFromDevice, takeFromLink } from "./view/edits.js";
import { runner } from "./view/run.js";
import { words } from "./words.js";

const toKeep = 400; // ms after the last key

async function copyLink(cells: readonly CellView[]): Promise<string> {
  const edits = editsOf(cells);
  if (Object.keys(edits).length === 0) return words.nothingEdited;
  const end = await linkEndOf(edits);
  if (!end) return words.tooLong(longestLinkEnd);
  const address = location.href.replace(/#.*|$/s, end);
  return (await addressCopied(address)) ? words.copied : words.inBar;
}

const press = (text: string, act: () => void): HTMLButtonElement => {
  const made = element("button", { type: "button" }, text);
  made.addEventListener("click", act);
  return made;
};

async function openBench(bar: Element, listing: Element): Promise<void> {
  let [keeps, timer] = [false, 0];
  const told = element("span", { role: "status" });
  const tell = (sentence: string) => {
    told.textContent = sentence;
  };
  const changed = () => {
    clearTimeout(timer);
    if (keeps) timer = window.setTimeout(keep, toKeep);
  };
  const keep = () => {
    timer = 0;
    keepOnDevice(cells);
  };
  addEventListener("pagehide", () => {
    if (timer) keep();
  });
  const start = () => void run();
  const cells = [...listing.querySelectorAll("h2")].map((heading) =>
    cellView(heading, changed, start),
  );
  const run = runner(cells, tell);
  const resetAll = () => {
    for (const { editor, written } of cells) if (editor.text() !== written) editor.replace(written);
    start();
  };
  const first = press(words.runKeys, start);
  const share = press(words.copyLink, async () => tell(await copyLink(cells)));
  bar.replaceChildren(first, press(words.resetAll, resetAll), share, told);
  bar.after(element("p", { class: "bench-about" }, `${words.about} ${words.keyboard}`));
  const brought = await takeFromLink(cells);
  if (brought) return tell(brought);
  takeFromDevice(cells);
  keeps = true;
  first.focus({ preventScroll: true });
  document.querySelector(location.hash || ":not(*)")?.scrollIntoView();
  await run();
}

const [bar, listing] = [document.querySelector(".bench-bar"), document.querySelector(".listing")];
if (bar && listing) openBench(bar, listing);
