import type { EventEntry } from "@rollbook/lib";
import { chosenCar, element } from "@rollbook/page";
import { theLog } from "../../../store/log.js";
import { daysOf, newDraft } from "../day/draft.js";
import { openExample } from "../day/example.js";
import { openDay, openFiled, theDay } from "../day/open-day.js";
import { button } from "../parts/fields.js";
import { say } from "../parts/notice.js";
import { words } from "../words.js";
import { plainCorner } from "./corner.js";

const { plan } = words;

/** Opens the example, a new day, or one of the log. */
export function dayChooser(redraw: () => void): HTMLElement {
  const start = () => {
    openDay(newDay());
    say(plan.dayOpened(plan.newName));
    redraw();
  };
  const example = () => {
    openExample();
    say(plan.exampleOpen);
    redraw();
  };
  return element(
    "div",
    { class: "day-chooser" },
    button("open-example", plan.example, example),
    button("new-day", plan.newDay, start),
    ...otherDays(redraw),
  );
}

const newDay = () => {
  const venue = { name: plan.newVenue, corners: [plainCorner(plan.corner(1))] };
  return newDraft(chosenCar(), { name: plan.newName, venue, driver: plan.newDriver });
};

function otherDays(redraw: () => void): HTMLElement[] {
  const days = daysOf(theLog()).filter(({ id }) => id !== theDay()?.event);
  if (days.length === 0) return [];
  const select = element("select", { id: "other-day" });
  select.append(
    element("option", { value: "" }, plan.choose),
    ...days.map(({ name, at }, i) =>
      element("option", { value: String(i) }, `${name} (${at.slice(0, 10)})`),
    ),
  );
  select.addEventListener("change", () => {
    const day = days[Number(select.value)];
    if (select.value !== "" && day !== undefined) open(day, redraw);
  });
  return [element("label", { for: "other-day" }, plan.otherDay, " ", select)];
}

function open(day: EventEntry, redraw: () => void): void {
  say(openFiled(day) ? plan.dayOpened(day.name) : plan.carMissing);
  redraw();
}
