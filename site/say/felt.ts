import type { FeltReason } from "@rollbook/lib";
import { shiftInWords, towards } from "./amount.js";
import { type Reader, spelt } from "./reader.js";

/** Why what was felt lies beside what the model says as it does; none says that a driver was wrong. */
export const feltReasonInWords = (reason: FeltReason, reader: Reader): string =>
  spelt(told(reason, reader), reader);

function told(reason: FeltReason, reader: Reader): string {
  switch (reason.code) {
    case "predicted":
      return `The model moves balance ${shiftInWords(reason.shift, reader)} here.`;
    case "several-changes":
      return `${reason.count} things were changed at once: nobody can say which of them was felt. Drive them one by one.`;
    case "no-report-before":
      return "There is no report on this place from the run before, so nothing can be compared.";
    case "felt-elsewhere":
      return `The shift ${towards(reason.towards)} was felt in another part of this corner: where a phase ends and the next begins is not the same for every driver.`;
    case "nothing-changed":
      return "Nothing was changed between these runs: this is how much feeling moves by itself, with tyres, fuel, track and line. Measure the other runs against it.";
    case "other-input":
      return `The driver was ${reason.before} before and ${reason.now ?? "did not say what"} now: another input is another test.`;
    case "near-threshold":
      return "The predicted shift is less than twice what can just be felt: some drivers feel it, some do not.";
    case "wheel-lifted":
      return "At the limit an inner wheel is in the air here: a little more or less grip then turns the picture over.";
    case "rough-road":
      return "The road is rough here; the model knows only smooth ones.";
    case "a-guess":
      return "One of the two reports was a guess: drive it again and ask before the lap times are known.";
    case "not-every-lap":
      return "It did not happen every lap: traffic, line or speed may have been different.";
  }
}
