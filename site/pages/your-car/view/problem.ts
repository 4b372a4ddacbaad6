import { element } from "@rollbook/page";
import { words } from "../words.js";
import { button } from "./parts.js";

/** All that is wrong with a file, and the offer to mend it where that can be done. */
export function problem(
  file: string,
  faults: readonly string[],
  mend: (() => void) | undefined,
): HTMLElement {
  const doing = element("div", { class: "doing" });
  const whole = element(
    "div",
    { class: "problem", role: "alert" },
    element("p", {}, words.faulty(file)),
    element("ul", {}, ...faults.map((fault) => element("li", {}, fault))),
    doing,
  );
  if (mend) {
    const open = () => {
      whole.remove();
      mend();
    };
    doing.append(button(words.mend, open));
    doing.before(element("p", { class: "note" }, words.mendNote));
  }
  doing.append(button(words.close, () => whole.remove()));
  return whole;
}
