import { neededFields, type Report, whatIsMissing } from "@rollbook/lib";
import { documentOf, element } from "@rollbook/page";
import { write } from "../../../store/log.js";
import { knownDay } from "../day/known-day.js";
import { runFor } from "../day/reporter.js";
import { button } from "../parts/fields.js";
import { say } from "../parts/notice.js";
import { refill } from "../parts/refill.js";
import { words } from "../words.js";
import { expectation } from "./expect.js";
import { filedReports } from "./filed.js";
import { questions } from "./form.js";
import { handOver } from "./hand-over.js";
import { asReporting, type Reporting, tidied, withAnswer } from "./state.js";
import { whoAsked } from "./who.js";

const { report: said } = words;
const nobody: Reporting = { driver: "", run: 1, report: {} };
const kept = documentOf({ key: "workshop/report", empty: nobody, read: asReporting });

/** Fills the report's section: first who, then the form. */
export function reportView(section: HTMLElement): () => void {
  let now = nobody;
  let asking = true;
  const asked = element("div", { class: "asked" });
  const bar = element("div", { class: "filing-bar" });

  function set(changed: Reporting): void {
    now = changed;
    void kept.set(now);
  }

  function answer<Field extends keyof Report>(field: Field, value: Report[Field]): void {
    set({ ...now, report: withAnswer(now.report, field, value, knownDay()?.venue) });
    if (field === "corner") drawQuestions();
    drawBar();
  }

  /** A name under way may be for a moment that of a corner: what was answered stays until it is done. */
  function typeCorner(corner: string): void {
    set({ ...now, report: { ...now.report, corner } });
    drawBar();
  }

  /** Draws nothing anew where nothing changed: whoever leaves the field may be pressing a button. */
  function endCorner(corner: string): void {
    const { report } = now;
    const whole = withAnswer(report, "corner", corner, knownDay()?.venue);
    if (whole.speedClass === report.speedClass && whole.grade === report.grade) return;
    answer("corner", corner);
  }

  function drawQuestions(): void {
    const venue = knownDay()?.venue;
    refill(asked, ...questions(now.report, now.run, venue, { answer, typeCorner, endCorner }));
  }

  function drawBar(strict = false): void {
    const report = tidied(now.report);
    const asks = neededFields.filter((field) => report[field] === undefined);
    const names = asks.map((field) => said.fields[field]).join(", ");
    const line = asks.length === 0 ? said.complete : said.missing(names);
    const anyway = button("file-anyway", said.fileAnyway, () => file());
    refill(
      bar,
      element("p", { id: "still-asked" }, line),
      button("file-report", said.file, tryToFile, { class: "large" }),
      ...(strict && asks.length > 0 ? [anyway] : []),
    );
  }

  /** Files what is complete; else asks for what is missing and goes there. */
  function tryToFile(): void {
    const [missing] = whatIsMissing(tidied(now.report)).filter(({ needed }) => needed);
    if (missing === undefined) {
      file();
      return;
    }
    drawBar(true);
    say(missing.ask);
    const place = document.getElementById(`ask-${missing.field}`);
    place?.scrollIntoView({ block: "center" });
    (place?.querySelector("input") ?? document.getElementById("ask-corner-text"))?.focus();
  }

  function file(): void {
    const { driver, run, report } = now;
    const { id } = runFor(driver, run);
    write({ kind: "report", run: id, report: tidied(report) });
    set({ driver, run, report: {} });
    show();
    say(said.filed);
    scrollTo(0, 0);
    section.querySelector("h2")?.focus({ preventScroll: true });
  }

  function whoDone(driver: string, run: number): void {
    const same = driver === now.driver && run === now.run;
    set({ driver, run, report: same ? now.report : {} });
    asking = false;
    show();
    section.querySelector<HTMLElement>("h3")?.focus();
  }

  function form(): HTMLElement[] {
    drawQuestions();
    drawBar();
    const other = button("change-who", said.changeWho, () => {
      asking = true;
      show();
    });
    const head = element("h3", { tabindex: -1 }, said.as(now.driver, now.run));
    return [
      element("div", { class: "who-line" }, head, other),
      ...expectation(now.driver, now.run, show),
      asked,
      bar,
      ...filedReports(now.driver, now.run, show),
      handOver(now.driver),
    ];
  }

  function show(): void {
    const parts = asking ? whoAsked(now.driver, now.run, whoDone) : form();
    const intro = element("p", { class: "quiet" }, said.intro);
    refill(section, element("h2", { tabindex: -1 }, words.views.report), intro, ...parts);
  }

  void kept.open().then(() => {
    if (kept.now.value === nobody || now !== nobody) return;
    now = kept.now.value;
    asking = now.driver === "";
    if (!section.hidden) show();
  });
  return show;
}
