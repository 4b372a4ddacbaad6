import { demoCar } from "@rollbook/lib";
import { element, spell } from "@rollbook/page";
import { placesAsDemo } from "../model/as-demo.js";
import { confirmed, withPart } from "../model/draft.js";
import type { Fault } from "../model/faults.js";
import { type Path, valueAt } from "../model/path.js";
import { type Section, sections } from "../sections.js";
import { sectionWords, words } from "../words.js";
import type { Desk } from "./desk.js";
import { item } from "./items.js";
import { button, goTo, idOf } from "./parts.js";
import { scales } from "./scales.js";

/** The form, and how it shows what is wrong and what is still the demo car's. */
export interface Form {
  readonly whole: HTMLElement;
  settle(faults: readonly Fault[]): void;
}

export interface FormWishes {
  /** What the scales said last. */
  readonly said: string;
  readonly say: (text: string) => void;
  /** Sections that are open, by id. */
  readonly open: Set<string>;
}

interface SectionView {
  readonly whole: HTMLElement;
  settle(faulty: ReadonlySet<Path>, asDemo: ReadonlySet<Path>): void;
}

export function form(desk: Desk, wishes: FormWishes): Form {
  desk.boxes.clear();
  const summary = element("div", { class: "faults", id: "faults", tabindex: -1 });
  const views = sections.map((section) => sectionView(desk, section, wishes));
  const whole = element("div", { class: "form" }, ...views.map((view) => view.whole), summary);
  return {
    whole,
    settle(faults) {
      const asDemo = new Set(placesAsDemo(desk.draft()));
      const sentences = new Map(faults.map(({ path, sentence }) => [path, sentence]));
      for (const [path, box] of desk.boxes) {
        box.settle(sentences.get(path) ?? "", asDemo.has(path));
      }
      const faulty = new Set(sentences.keys());
      for (const view of views) view.settle(faulty, asDemo);
      summary.replaceChildren(...faultList(desk, faults));
    },
  };
}

/** All faults at once, each a link to its box. */
function faultList(desk: Desk, faults: readonly Fault[]): HTMLElement[] {
  if (faults.length === 0) return [];
  const links = faults.map(({ path, sentence }) => {
    const id = idOf(nearest(desk, path));
    const link = element("a", { href: `#${id}` }, spell(sentence));
    link.addEventListener("click", (event) => {
      event.preventDefault();
      goTo(id);
    });
    return element("li", {}, link);
  });
  return [element("h3", {}, words.faults(faults.length)), element("ul", {}, ...links)];
}

/** The place itself, or the part around it that is on the form. */
function nearest(desk: Desk, path: Path): Path {
  if (desk.boxes.has(path) || path === "") return path || "name";
  return nearest(desk, path.split(".").slice(0, -1).join("."));
}

function sectionView(desk: Desk, section: Section, wishes: FormWishes): SectionView {
  const { title, opening } = sectionWords[section.id] ?? { title: section.id };
  const state = element("span", { class: "state" });
  const before = new Set(desk.boxes.keys());
  const tools = section.tool === "scales" ? [scales(desk, wishes.said, wishes.say)] : [];
  const lines = section.items.map((one) => item(desk, one));
  const mine = [...desk.boxes.keys()].filter((path) => !before.has(path));
  const head = element(
    "summary",
    { id: `head-${section.id}` },
    element("h2", {}, spell(title)),
    " ",
    state,
  );
  const confirm = button(words.confirm, () => desk.change(confirmed(desk.draft(), mine), head.id));
  const whole = element(
    "details",
    { class: "section", id: `section-${section.id}`, open: wishes.open.has(section.id) },
    head,
    ...(opening ? [element("p", { class: "opening" }, spell(opening))] : []),
    ...(section.id === "links" ? unlinks(desk) : []),
    ...tools,
    ...lines,
    confirm,
  );
  whole.addEventListener("toggle", () => {
    if (whole.open) wishes.open.add(section.id);
    else wishes.open.delete(section.id);
  });
  return {
    whole,
    settle(faulty, asDemo) {
      const [wrong, left] = [faulty, asDemo].map(
        (set) => mine.filter((path) => set.has(path)).length,
      );
      state.textContent = [
        wrong ? words.faults(wrong) : "",
        left ? words.asDemo(left, demoCar.name) : "",
      ]
        .filter((text) => text !== "")
        .join(" · ");
      state.classList.toggle("wrong", Boolean(wrong));
      confirm.hidden = !left;
    },
  };
}

/** What the page says of axles whose file has the joints of their links. */
function unlinks(desk: Desk): HTMLElement[] {
  return (["front", "rear"] as const).flatMap((end) => {
    const path = `${end}.linkage`;
    if (valueAt(desk.draft().base, path) === undefined) return [];
    const take = () =>
      desk.change(
        withPart(desk.draft(), path, undefined),
        idOf(`${end}.geometry.rollCentreHeight`),
      );
    return [
      element("p", { class: "note" }, words.linked(end), " ", button(words.unlink(end), take)),
    ];
  });
}
