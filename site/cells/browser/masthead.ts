import { effect } from "@preact/signals-core";
import { demoCar, uncertainNumbersOf } from "@rollbook/lib";
import { shortcutsFor } from "../../say/places.js";
import type { UnitSystem } from "../../say/units.js";
import { chosenRole } from "../../store/role.js";
import { chosenUnits } from "../../store/units.js";
import { reader } from "../reader.js";
import { words } from "../words.js";
import { element } from "./element.js";

function unitSwitch(): HTMLElement {
  const select = element(
    "select",
    { "aria-label": words.units },
    element("option", { value: "metric", selected: reader.units === "metric" }, words.metric),
    element("option", { value: "us", selected: reader.units === "us" }, words.us),
  );
  select.addEventListener("change", () => {
    void chosenUnits.set(select.value as UnitSystem);
    location.reload();
  });
  return select;
}

/** Puts the links that this reader wants beside the menu, which has them all. */
function showShortcuts(place: Element, menu: Element): void {
  const links = new Map(
    [...menu.querySelectorAll("a")].map((link) => [link.getAttribute("href") ?? "", link]),
  );
  effect(() => {
    const wanted = shortcutsFor(chosenRole.now.value).flatMap(
      (name) => links.get(`${name}.html`) ?? [],
    );
    place.replaceChildren(...wanted.map((link) => link.cloneNode(true)));
  });
}

/** Closes the menu when somebody goes on elsewhere. */
function closeElsewhere(menu: HTMLDetailsElement): void {
  addEventListener("click", ({ target }) => {
    if (target instanceof Node && !menu.contains(target)) menu.open = false;
  });
  menu.addEventListener("keydown", ({ key }) => {
    if (key !== "Escape") return;
    menu.open = false;
    menu.querySelector("summary")?.focus();
  });
}

/** Adds what the head of a page can only offer with a script: the reader's shortcuts, the unit switch, and whose car it shows. */
export function completeMasthead(): void {
  const menu = document.querySelector<HTMLDetailsElement>(".masthead .menu");
  const place = document.querySelector(".masthead .shortcuts");
  if (menu && place) {
    if (chosenRole.now.value !== "") showShortcuts(place, menu);
    closeElsewhere(menu);
  }
  (menu?.querySelector(".menu-pages") ?? document.querySelector(".masthead nav"))?.append(
    unitSwitch(),
  );
  const whose = document.getElementById("whose");
  if (!whose || reader.car === demoCar) return;
  const numbers = uncertainNumbersOf(reader.car);
  const estimated = numbers.filter(({ how }) => how === "estimated").length;
  const link = element("a", { href: "measure.html#next" }, words.surer);
  const told = `${words.figuresFor(reader.car.name)} ${words.estimatedOf(estimated, numbers.length)}:`;
  whose.replaceChildren(`${told} `, link);
}
