import { words } from "./words.js";

/** The sign at the foot of the page. */
export class Sign {
  /** Whether the reader asked for the newer course. */
  asked = false;
  readonly #line = document.createElement("p");
  readonly #lasting: string;

  /** @param lasting - a sentence that stays beside whatever is said */
  constructor(lasting: string) {
    this.#lasting = lasting;
    this.#line.className = "offline";
    this.#line.setAttribute("role", "status");
    document.querySelector(".colophon")?.append(this.#line);
  }

  say(sentence: string): void {
    this.#line.replaceChildren(`${sentence} ${this.#lasting}`);
  }

  /** Offers the newer course. */
  offer(show: () => void): void {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = words.show;
    button.addEventListener("click", () => {
      this.asked = true;
      show();
    });
    this.#line.replaceChildren(`${words.ready} ${words.newer} `, button);
  }
}
