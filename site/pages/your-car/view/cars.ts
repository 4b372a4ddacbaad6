import { type Car, demoCar, format, frontShareOf, totalMassOf } from "@rollbook/lib";
import { element, ownCars, reader } from "@rollbook/page";
import type { Draft } from "../model/draft.js";
import { words } from "../words.js";
import { drafts } from "./kept.js";
import { button } from "./parts.js";

/** What the reader can do with the list of cars. */
export interface CarsWishes {
  readonly show: (name: string) => void;
  readonly start: () => void;
  readonly takeIn: (files: readonly File[]) => void;
  readonly edit: (id: string) => void;
  readonly asFile: (car: Car) => void;
  readonly copy: (car: Car) => void;
  readonly remove: (car: Car) => void;
  readonly openId: () => string;
}

/** The reader's cars: which of them the course shows, and what can be done with each. */
export function cars(wishes: CarsWishes): HTMLElement {
  const { cars: kept, current } = ownCars.now.value;
  const all = drafts();
  const shown = kept.some(({ name }) => name === current) ? current : demoCar.name;
  const lines = [demoCar, ...kept].map((car) =>
    line(
      car,
      car.name === shown,
      all.find(({ of }) => of === car.name),
      wishes,
    ),
  );
  const fresh = all.filter(({ of }) => of === undefined || !kept.some(({ name }) => name === of));
  return element(
    "section",
    { class: "cars", "aria-labelledby": "cars-title" },
    element("h2", { id: "cars-title" }, words.cars),
    element(
      "fieldset",
      {},
      element("legend", {}, words.courseShows),
      element("ul", {}, ...lines, ...fresh.map((draft) => freshLine(draft, wishes))),
    ),
    element(
      "div",
      { class: "doing" },
      button(words.startCopy(demoCar.name), wishes.start, { id: "start" }),
      opener(wishes),
    ),
  );
}

function about(car: Car): string {
  const { mass, ...where } = totalMassOf(car);
  const front = frontShareOf({ mass, ...where }, car.wheelbase);
  const weight = format("mass", mass, 0, reader.units);
  return `${weight}, ${format("share", front, 0)} ${words.inFront}`;
}

function line(car: Car, shown: boolean, draft: Draft | undefined, wishes: CarsWishes): HTMLElement {
  const own = car === demoCar;
  const input = element("input", { type: "radio", name: "shown", value: car.name, checked: shown });
  input.addEventListener("change", () => wishes.show(car.name));
  const told = [own ? words.own : "", about(car), draft ? words.unsaved : ""].filter(Boolean);
  const label = element(
    "label",
    {},
    input,
    element("span", {}, element("b", {}, car.name), " ", element("small", {}, told.join(" · "))),
  );
  const doing = own ? [] : actions(car, draft, wishes);
  return element("li", {}, label, element("span", { class: "doing" }, ...doing));
}

function actions(car: Car, draft: Draft | undefined, wishes: CarsWishes): HTMLElement[] {
  const id = draft?.id ?? car.name;
  const named = (text: string) => ({ "aria-label": `${text}: ${car.name}` });
  const open = wishes.openId() === id;
  return [
    button(open ? words.editing : words.edit, () => wishes.edit(id), {
      ...named(open ? words.editing : words.edit),
      disabled: open,
    }),
    button(words.asFile, () => wishes.asFile(car), named(words.asFile)),
    button(words.copy, () => wishes.copy(car), named(words.copy)),
    button(words.remove, () => wishes.remove(car), named(words.remove)),
  ];
}

/** A car that was begun and never saved. */
function freshLine(draft: Draft, wishes: CarsWishes): HTMLElement {
  const name = draft.typed.name?.text ?? String(draft.base.name ?? "");
  const open = wishes.openId() === draft.id;
  const text = open ? words.editing : words.edit;
  return element(
    "li",
    { class: "fresh" },
    element("span", {}, element("b", {}, name), " ", element("small", {}, words.notSaved)),
    element(
      "span",
      { class: "doing" },
      button(text, () => wishes.edit(draft.id), {
        "aria-label": `${text}: ${name}`,
        disabled: open,
      }),
    ),
  );
}

function opener({ takeIn }: CarsWishes): HTMLElement {
  const input = element("input", {
    type: "file",
    id: "files",
    accept: ".json,application/json",
    multiple: true,
  });
  input.addEventListener("change", () => {
    takeIn([...(input.files ?? [])]);
    input.value = "";
  });
  return element("label", { class: "choose" }, `${words.open} `, input);
}
