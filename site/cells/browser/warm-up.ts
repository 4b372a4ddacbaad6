import { words } from "../words.js";
import { element } from "./element.js";
import { ownScript } from "./trusted.js";

const scripts = ["physics.js", "views.js", "questions.js"];
const styles = "questions.css";
const firstWithEarlier = 2; // chapter number

/** Loads the questions into the fold; a reader who does not open it loads nothing. */
function load(fold: HTMLElement): void {
  const wanted = scripts.map((source) => {
    const script = ownScript(source);
    script.async = false; // one after the other
    return script;
  });
  wanted.at(-1)?.addEventListener("error", () => {
    fold.append(element("p", { class: "fault", role: "alert" }, words.noQuestions));
  });
  document.head.append(element("link", { rel: "stylesheet", href: styles }), ...wanted);
}

/** A page on its own has no questions beside it. */
const hasQuestions = (): boolean => document.querySelector('a[href="questions.html"]') !== null;

/** Offers questions from earlier chapters to warm up with, under the idea of a chapter. */
export function offerWarmUp(): void {
  const [, number] = /^(\d\d)-[^.]+$/.exec(document.documentElement.dataset.page ?? "") ?? [];
  const idea = document.querySelector("article > h1 + p");
  if (!number || Number(number) < firstWithEarlier || !idea || !hasQuestions()) return;
  const fold = element("details", { class: "warm-up" }, element("summary", {}, words.warmUp));
  fold.addEventListener("toggle", () => load(fold), { once: true });
  idea.after(fold);
}
