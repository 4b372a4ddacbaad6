import { element, ownCars, reader } from "@rollbook/page";
import { contentOf, type Draft, withTyped } from "../model/draft.js";
import { type Fault, faultsOf } from "../model/faults.js";
import { words } from "../words.js";
import type { Box } from "./box.js";
import type { Desk } from "./desk.js";
import { type Form, form } from "./form.js";
import { keepDraft } from "./kept.js";
import { button } from "./parts.js";
import { summaryView } from "./summary.js";

/** The car being worked on: its form, and beside it what it comes to. */
export interface Editor {
  readonly whole: HTMLElement;
  draft(): Draft | undefined;
  faults(): Fault[];
  open(draft: Draft | undefined): void;
}

export interface EditorWishes {
  /** A change was put on the device, or could not be. */
  readonly kept: (held: boolean, path: string) => void;
  readonly save: (show: boolean) => void;
  readonly discard: () => void;
}

/** @param guide - what stands in the form's place while no car is open */
export function editor(guide: readonly Node[], wishes: EditorWishes): Editor {
  const [summary, place] = [summaryView(), element("div", { class: "form-place" })];
  const whole = element("div", { class: "bench" }, place, summary.whole);
  const boxes = new Map<string, Box>();
  const openSections = new Set(["name", "sizes"]);
  let draft: Draft | undefined;
  let shown: Form | undefined;
  let said = "";

  function faults(): Fault[] {
    if (!draft) return [];
    const { of } = draft;
    const others = ownCars.now.value.cars.map(({ name }) => name);
    return faultsOf(
      draft,
      others.filter((name) => name !== of),
      reader.units,
    );
  }

  function settle(): void {
    if (!draft) return;
    const found = faults();
    shown?.settle(found);
    summary.settle(contentOf(draft), found.length === 0);
  }

  function take(next: Draft, path: string): void {
    draft = next;
    void keepDraft(next).then((held) => wishes.kept(held, path));
  }

  const desk = (opened: Draft): Desk => ({
    draft: () => draft ?? opened,
    type(path, text) {
      take(withTyped(draft ?? opened, path, text, reader.units), path);
      settle();
    },
    change(changed, focus) {
      take(changed, "");
      show();
      document.getElementById(focus)?.focus();
    },
    boxes,
  });

  const ends = () =>
    element(
      "div",
      { class: "doing ends" },
      button(words.saveAndShow, () => wishes.save(true), { class: "primary", id: "save-and-show" }),
      button(words.save, () => wishes.save(false), { id: "save" }),
      button(words.discard, wishes.discard, { id: "discard" }),
      element("p", { class: "note" }, words.draftKept),
    );

  function show(): void {
    whole.classList.toggle("editing", draft !== undefined);
    summary.whole.hidden = draft === undefined;
    if (!draft) {
      place.replaceChildren(...guide);
      return;
    }
    const work = desk(draft);
    const say = (text: string) => {
      said = text;
    };
    shown = form(work, { open: openSections, said, say });
    place.replaceChildren(shown.whole, ends());
    settle();
  }

  return {
    whole,
    draft: () => draft,
    faults,
    open(next) {
      draft = next;
      said = "";
      show();
    },
  };
}
