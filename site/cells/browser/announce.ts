import { element } from "./element.js";

const rest = 600; // ms without a move
const heardOut = 5000; // ms after which nobody should come upon it a second time

/** A sentence for those who listen, said once things stand still: amid moves none would be heard out. */
export function announcer(): { readonly node: HTMLElement; say(sentence: string): void } {
  const node = element("p", { class: "aloud", role: "status" });
  let timer = 0;
  const after = (delay: number, work: () => void) => {
    clearTimeout(timer);
    timer = window.setTimeout(work, delay);
  };
  return {
    node,
    say(sentence) {
      node.textContent = "";
      after(rest, () => {
        node.textContent = sentence;
        after(heardOut, () => {
          node.textContent = "";
        });
      });
    },
  };
}
