import { effect } from "@preact/signals-core";
import { refusals } from "../../../store/told.js";
import { frontEndWords as words } from "../../front-end-words.js";
import { spell } from "../../reader.js";
import { startValues } from "../../spec.js";
import { element, within } from "../element.js";
import { exercise } from "../exercise.js";
import { figure } from "../figure.js";
import { predict } from "../predict.js";
import { fill } from "../trusted.js";
import { foldSource } from "./fold-source.js";
import type { Call, Ran } from "./replay.js";
import { styles } from "./styles.js";
import { themed } from "./theme.js";

const IMAGE = "data:image/svg+xml,";

/** The drawings that the still holds as images, as drawings again. */
function drawAgain(place: Element): void {
  for (const image of place.querySelectorAll("img")) {
    const source = image.getAttribute("src") ?? "";
    if (!source.startsWith(IMAGE)) continue;
    const holder = element("div");
    fill(holder, decodeURIComponent(source.slice(IMAGE.length)));
    holder.firstElementChild?.removeAttribute("style");
    image.replaceWith(...holder.childNodes);
  }
}

/** Whether the cells, run here, say what they said in the kernel. */
function saysTheSame(place: Element, call: Call): boolean {
  if (call.kind !== "figure") return true;
  const { says, inputs } = call.spec;
  return place.querySelector(".says")?.textContent === spell(says(startValues(inputs)));
}

/** The notebook's name, so that two of them in one window keep apart what is filed. */
function roomOf(notebook: string): string {
  const [, shown = ""] = /([^/]+)\.ipynb$/.exec(decodeURIComponent(location.pathname)) ?? [];
  return notebook || shown || "notebook";
}

function begin(call: Call, room: string): void {
  const named = (id: string) => `${room}/${id}`;
  const { spec } = call;
  const id = named(spec.id);
  if (call.kind === "exercise") exercise({ ...call.spec, id });
  else if (call.kind === "predict") predict({ ...call.spec, id });
  else {
    const { after } = call.spec;
    figure({ ...call.spec, id, ...(after !== undefined && { after: named(after) }) });
  }
}

/** Said once something that was filed could not be kept. */
function keptNote(): HTMLElement {
  const note = element("p", { role: "status" }, words.keptNowhere);
  effect(() => {
    note.hidden = refusals.value === 0;
  });
  return note;
}

/** Links to a place of the notebook lead to the output that holds it. */
function leadOn(root: HTMLElement): void {
  root.addEventListener("click", (event) => {
    const [link] = event.composedPath();
    const to = link instanceof Element ? link.closest("a")?.getAttribute("href") : undefined;
    if (!to?.startsWith("#")) return;
    event.preventDefault();
    const places = [...document.querySelectorAll(".rollbook[data-taken]")];
    const place = places.find(({ shadowRoot }) => shadowRoot?.getElementById(to.slice(1)));
    place?.scrollIntoView();
  });
}

/** Brings the one figure or question of an output to life, apart from the styles of the front end. */
export function enliven(output: HTMLElement, ran: Ran, notebook: string): void {
  const place = output.querySelector("[id]");
  const call = ran.find(({ spec }) => spec.id === place?.id);
  if (!place || !call || !saysTheSame(place, call)) throw new Error(words.otherHere);
  const room = roomOf(notebook);
  output.querySelector("[data-still]")?.remove();
  const root = element("div", { class: "output" }, place);
  place.id = `${room}/${place.id}`;
  drawAgain(place);
  const shadow = output.attachShadow({ mode: "open" });
  shadow.adoptedStyleSheets = [styles()];
  shadow.append(root);
  leadOn(root);
  themed(output);
  within(shadow, () => begin(call, room));
  if (call.kind !== "figure") {
    root.append(keptNote());
    foldSource(output);
  }
}

/** Says at an output why it does not live. */
export function sayWhyStill(output: HTMLElement, error: unknown): void {
  const reason = error instanceof Error ? error.message : String(error);
  const note = output.querySelector("[data-still]") ?? output.appendChild(element("p"));
  note.textContent = words.stillBecause(reason);
}
