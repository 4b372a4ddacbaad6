import type { Car } from "../../lib/car/car.js";
import { ruleColumns, worstFact } from "../../lib/day/class/class-columns.js";
import { type CarClass, factsInClass } from "../../lib/day/class/class-file.js";
import { escapeHtml } from "../cells/escape.js";
import { factName, factStanding, ruleInWords, shownTo } from "../say/class-rules.js";
import type { UnitSystem } from "../say/units.js";
import { classWords } from "../say/your-car/classes.js";
import { words } from "./words.js";

const list = (texts: readonly string[]): string =>
  `<ul>${texts.map((text) => `<li>${escapeHtml(text)}</li>`).join("")}</ul>`;

/** Each rule with how the car stands to it, at the wheel that is nearest to the limit. */
function standings(car: Car, carClass: CarClass, units: UnitSystem): string[] {
  const show = shownTo({ units });
  return ruleColumns(factsInClass(car, carClass)).flatMap(({ facts }) => {
    const worst = worstFact(facts);
    return worst ? [`${factName(worst, show)}: ${factStanding(worst, show)}`] : [];
  });
}

/** What a class asks for and says before the first run, and how the file's car stands to its rules. */
export function classPart(carClass: CarClass, car: Car | undefined, units: UnitSystem): string {
  const { name, notes, rules, briefing, course } = carClass;
  const told = (text: string) =>
    text
      .split(/\n\s*\n/)
      .map((one) => `<p>${escapeHtml(one)}</p>`)
      .join("");
  return `<section id="class" class="class"><h1>${escapeHtml(words.ofClass(name))}</h1>
${notes === undefined ? "" : told(notes)}
<blockquote class="caution"><p>${classWords.caution}</p></blockquote>
<h2>${words.rules}</h2>
${list(rules.flatMap((rule) => ruleInWords(rule, shownTo({ units }))))}
${car ? `<h2>${escapeHtml(words.against(car.name))}</h2>${list(standings(car, carClass, units))}` : ""}
${briefing === undefined ? "" : `<h2>${classWords.briefing}</h2>${told(briefing)}`}
${course === undefined ? "" : `<p>${classWords.course}: <a href="${course}">${course}</a></p>`}
</section>`;
}
