import { words } from "../words.js";
import { element } from "./element.js";
import { ownScript } from "./trusted.js";

const scripts = ["physics.js", "views.js", "questions.js"];
const styles = "questions.css";
const firstWithEarlier = 2; // chapter number

let isLoaded = false;

/** Loads the questions into the folds of a chapter; a reader who opens none loads nothing. */
function load(fold: HTMLElement): void {
  if (isLoaded) return;
  isLoaded = true;
  const wanted = scripts.map((source) => {
    const script = ownScript(source);
    script.async = false; // one after the other
    return script;
  });
  wanted.at(-1)?.addEventListener("error", () => {
    isLoaded = false;
    fold.append(element("p", { class: "fault", role: "alert" }, words.noQuestions));
  });
  document.head.append(element("link", { rel: "stylesheet", href: styles }), ...wanted);
}

function foldOf(asks: "earlier" | "own", title: string): HTMLElement {
  const fold = element(
    "details",
    { class: "warm-up", "data-asks": asks },
    element("summary", {}, title),
  );
  fold.addEventListener("toggle", () => load(fold));
  return fold;
}

/** A page on its own has no questions beside it. */
const hasQuestions = (): boolean => document.querySelector('a[href="questions.html"]') !== null;

/**
 * Offers questions in a chapter: from earlier chapters to warm up with, under its idea, and of its own,
 * where it has any, at the end of *Why*.
 */
export function offerQuestions(): void {
  const [, number] = /^(\d\d)-[^.]+$/.exec(document.documentElement.dataset.page ?? "") ?? [];
  const idea = document.querySelector("article > h1 + p");
  if (!number || !idea || !hasQuestions()) return;
  if (Number(number) >= firstWithEarlier) idea.after(foldOf("earlier", words.warmUp));
  const why = document.querySelector("article[data-has-questions] .part:has(> #why)");
  why?.append(foldOf("own", words.checkYourself));
}
