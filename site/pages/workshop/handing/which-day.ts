import type { Log } from "@rollbook/lib";
import { dayNamedIn } from "../../../hand-over/log-text.js";
import { theLog } from "../../../store/log.js";
import { words } from "../words.js";

const { handing: said } = words;

/**
 * The day that handed-over entries belong to, in a sentence, and whether that day is in this log or
 * comes with them. An address of the workbook that differs, though of the same device, has another log.
 *
 * @param text - what was handed over, as it came
 */
export function whichDay(text: string, log: Log): { sentence?: string; here: boolean } {
  const [event] = log.entries.filter(({ kind }) => kind === "event");
  if (event?.kind === "event") return { sentence: said.isDay(event.name), here: true };
  const day = dayNamedIn(text);
  if (day === undefined) return { here: true };
  const here = theLog().entries.some(({ id }) => id === day.id);
  const address = new URL("./", location.href).href;
  return { sentence: here ? said.dayHere(day.name) : said.dayNotHere(day.name, address), here };
}
