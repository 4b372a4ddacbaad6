import {
  type Car,
  type Complaint,
  diagnose,
  type End,
  Refusal,
  type Report,
  type Tried,
  type Venue,
} from "@rollbook/lib";
import { element } from "@rollbook/page";
import { chips } from "../parts/chips.js";
import { button } from "../parts/fields.js";
import { say } from "../parts/notice.js";
import { refill } from "../parts/refill.js";
import { soon } from "../parts/soon.js";
import { balanceText } from "../report/balance-scale.js";
import { words } from "../words.js";
import { told } from "./diagnosis.js";
import { balancesOf, placesIn, type ReportedPlace } from "./places.js";

const { talk: said } = words;

/** What a diagnosis needs besides the choice of places. */
export interface Case {
  readonly car: Car;
  readonly measured: Car;
  readonly venue: Venue;
  readonly reports: readonly Report[];
  readonly tried: readonly Tried[];
}

type Pressure = keyof typeof said.pressures;

const pressureOff: Readonly<Record<Pressure, readonly End[] | undefined>> = {
  unknown: undefined,
  right: [],
  front: ["front"],
  rear: ["rear"],
  both: ["front", "rear"],
};

/** Choice of places, then the ranked single changes. */
export function nextChange(given: Case): HTMLElement[] {
  const places = placesIn(given.reports);
  const chosen = new Set<ReportedPlace>(places.slice(0, 1));
  let pressure: Pressure = "unknown";
  const result = element("div", { id: "diagnosis" });
  const later = soon();
  const work = () => {
    const reports = places.filter((place) => chosen.has(place)).flatMap((place) => place.reports);
    if (reports.length === 0) {
      say(said.chooseOne);
      return;
    }
    say(said.working);
    later(() => {
      refill(result, ...answer({ ...given, reports }, pressureOff[pressure]));
      say(result.querySelector("p")?.textContent ?? "");
    });
  };
  const pressures = (Object.keys(said.pressures) as Pressure[]).map((value) => ({
    value,
    text: said.pressures[value],
  }));
  return [
    placeChoice(places, chosen),
    chips("pressure", said.pressure, pressures, pressure, (value) => {
      pressure = value;
    }),
    button("work-out", said.workOut, work, { class: "large" }),
    result,
  ];
}

function placeChoice(places: readonly ReportedPlace[], chosen: Set<ReportedPlace>): HTMLElement {
  const boxes = places.map((place, i) => {
    const box = element("input", {
      type: "checkbox",
      id: `place-${i}`,
      checked: chosen.has(place),
    });
    box.addEventListener("change", () => {
      if (box.checked) chosen.add(place);
      else chosen.delete(place);
    });
    const { corner = words.report.nowhere, phase = words.report.noPhase } = place;
    const balances = balancesOf(place.reports).map(balanceText).join(" ");
    const text = said.place(corner, phase, balances);
    return element("label", { class: "check", for: `place-${i}` }, box, text);
  });
  return element("fieldset", { class: "places" }, element("legend", {}, said.which), ...boxes);
}

function answer({ ...given }: Case, off: readonly End[] | undefined): HTMLElement[] {
  const complaint: Complaint = { ...given, ...(off && { pressureOff: off }) };
  try {
    return told(diagnose(complaint), given);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return [element("p", { class: "beware" }, said.cannotStand(error.message))];
  }
}
