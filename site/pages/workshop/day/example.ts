import { exampleLog, nowStandingFor, standing } from "@rollbook/lib";
import { takeIn, theLog } from "../../../store/log.js";
import { openFiled } from "./open-day.js";

/** Takes the invented day into the log, once, and opens it. */
export function openExample(): void {
  takeIn(exampleLog);
  const [example] = standing(exampleLog, "event");
  const event = example && nowStandingFor(theLog(), "event", example.id);
  if (event !== undefined) openFiled(event);
}
