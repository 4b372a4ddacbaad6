import { logNow } from "../../../store/log.js";
import { canFile, isFiled } from "../day/draft.js";
import { dayNow } from "../day/open-day.js";
import { words } from "../words.js";
import { isPaddock, member, standing } from "./place.js";

const { state: said } = words.paddock;

/** Whether the plan here has changes that no other device sees. */
function hasDraft(): boolean {
  const day = dayNow.value;
  return day !== undefined && canFile(day) && !isFiled(day, logNow.value);
}

/** How it stands with the desk, above every view; nothing where there is none. */
export function StateLine() {
  const who = member.now.value;
  if (!isPaddock() || who === undefined) return null;
  const { reachable, out, waiting, aside, refused, trouble } = standing.value;
  const sentences = [
    ...(out ? [said.out] : [who.role === "desk" ? said.desk : said.in(who.name)]),
    ...(reachable === false && !out ? [said.away] : []),
    ...(trouble !== undefined && !out ? [trouble] : []),
    ...(who.role === "desk" && hasDraft() ? [said.draft] : []),
    ...(waiting.length > aside ? [said.waiting(waiting.length - aside)] : []),
    ...(aside > 0 ? [said.aside(aside)] : []),
    ...(refused.length > 0 ? [said.refused(refused.length)] : []),
    ...(reachable === false && waiting.length > 0 ? [said.another] : []),
  ];
  const kind =
    out || reachable === false || refused.length > 0 || aside > 0 || trouble !== undefined
      ? "beware"
      : "quiet";
  return (
    <p id="paddock-state" class={kind} data-waiting={waiting.length}>
      {sentences.join(" ")}
    </p>
  );
}
