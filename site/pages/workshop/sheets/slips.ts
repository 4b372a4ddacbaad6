import {
  comparisons,
  confidences,
  driverInputs,
  expectations,
  GREATEST_BALANCE,
  grades,
  howOften,
  phaseNames,
  speedClasses,
} from "@rollbook/lib";
import { element } from "@rollbook/page";
import type { Draft } from "../day/draft.js";
import { balanceText } from "../report/balance-scale.js";
import { words } from "../words.js";
import { blank, paper, toMark } from "./paper.js";

const { sheets: said } = words;

const head = (title: string): HTMLElement[] => [
  element("h4", {}, title),
  element("div", { class: "who" }, blank(said.name), blank(said.runBlank)),
];

/** Four slips on which to predict, to be cut apart. */
export function predictionSlips(day: Draft): HTMLElement[] {
  const slip = () =>
    element(
      "section",
      { class: "slip" },
      ...head(said.predictTitle),
      toMark(
        said.predictAsk,
        expectations.map((one) => words.report.expects[one]),
      ),
      toMark(said.predictWhere, phaseNames),
      blank(said.because, "two"),
      toMark(said.sure, confidences),
    );
  const slips = element("div", { class: "slips four" }, slip(), slip(), slip(), slip());
  return [paper(day, said.kinds.predict, slips)];
}

/** Two slips on which to report, to be cut apart. */
export function reportSlips(day: Draft): HTMLElement[] {
  const slips = element("div", { class: "slips two" }, reportSlip(day), reportSlip(day));
  return [paper(day, said.kinds.report, slips)];
}

function reportSlip({ venue }: Draft): HTMLElement {
  return element(
    "section",
    { class: "slip" },
    ...head(said.reportTitle),
    toMark(
      said.where,
      venue.corners.map(({ name }) => name),
    ),
    element(
      "div",
      { class: "who" },
      blank(said.other),
      toMark(said.otherIs, [...speedClasses, ...grades]),
    ),
    toMark(said.when, phaseNames),
    toMark(said.doing, driverInputs),
    scale(),
    toMark(said.often, howOften),
    toMark(said.against, comparisons),
    toMark(said.sure, confidences),
    blank(said.words, "two"),
  );
}

function scale(): HTMLElement {
  const marks = Array.from({ length: 2 * GREATEST_BALANCE + 1 }, (_, i) =>
    element("span", {}, balanceText(i - GREATEST_BALANCE)),
  );
  return element(
    "p",
    { class: "to-mark paper-scale" },
    element("b", {}, said.what),
    element("i", {}, said.rear),
    ...marks,
    element("i", {}, said.front),
  );
}
