import { element } from "@rollbook/page";
import { forgetWorkshop } from "../../../store/log.js";
import { button } from "../parts/fields.js";
import { say } from "../parts/notice.js";
import { words } from "../words.js";

const { log: said } = words;

/** Forgets all, after a second yes. */
export function forget(redraw: () => void): HTMLElement[] {
  const place = element("p", { class: "tools" });
  const done = () => {
    void forgetWorkshop().then(() => {
      redraw();
      say(said.forgotten);
    });
  };
  const ask = () => {
    place.replaceChildren(
      button("forget-sure", said.forgetSure, done),
      button("forget-not", said.cancel, start),
    );
    document.getElementById("forget-not")?.focus();
  };
  const start = () => place.replaceChildren(button("forget", said.forgetStart, ask));
  start();
  return [element("h3", {}, said.forget), element("p", { class: "quiet" }, said.forgetHelp), place];
}
