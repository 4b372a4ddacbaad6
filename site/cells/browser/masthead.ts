import { demoCar, uncertainNumbersOf } from "@rollbook/lib";
import type { UnitSystem } from "../../say/units.js";
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

/** Adds what the head of a page can only offer with a script: the unit switch, and whose car it shows. */
export function completeMasthead(): void {
  document.querySelector(".masthead nav")?.append(unitSwitch());
  const whose = document.getElementById("whose");
  if (!whose || reader.car === demoCar) return;
  const numbers = uncertainNumbersOf(reader.car);
  const estimated = numbers.filter(({ how }) => how === "estimated").length;
  const link = element("a", { href: "measure.html#next" }, words.surer);
  const told = `${words.figuresFor(reader.car.name)} ${words.estimated(estimated, numbers.length)}`;
  whose.replaceChildren(`${told} `, link);
}
