import { formatLog } from "@rollbook/lib";
import { element, forFileName, saveFile } from "@rollbook/page";
import { filedDay } from "../day/reporter.js";
import { button } from "../parts/fields.js";
import { fold } from "../parts/fold.js";
import { words } from "../words.js";
import { codes } from "./codes.js";

const { handing: said } = words;

/** The filed day without its car, for the phones of drivers. */
export function dayToPhones(): HTMLElement[] {
  const place = element("div", {});
  const event = filedDay();
  if (event === undefined) return [];
  const save = () =>
    saveFile(said.dayName(forFileName(event.name, "log")), formatLog({ entries: [event] }));
  const show = () => {
    void codes([event], "report").then((made) => place.replaceChildren(...made));
  };
  const content = [
    element("p", { class: "quiet" }, said.dayHelp),
    element(
      "p",
      { class: "tools" },
      button("day-code", said.show, show),
      button("day-file", said.saveDay, save),
    ),
    place,
  ];
  return [fold("day-to-phones", said.dayToPhones, ...content)];
}
