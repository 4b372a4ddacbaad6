import { differenceOfSetUps, type Version, versionsOf } from "@rollbook/lib";
import { element, reader } from "@rollbook/page";
import { changeLabel } from "../../../say/change.js";
import { theLog } from "../../../store/log.js";
import { listOf } from "../parts/fields.js";
import { refill } from "../parts/refill.js";
import { table } from "../parts/table.js";
import { words } from "../words.js";
import { timeOf } from "./time.js";

const { log: said } = words;
const { columns } = said;

/** Every version of every set-up, and what is new in it; any two can be laid side by side. */
export function setUps(): HTMLElement[] {
  const versions = versionsOf(theLog());
  const title = element("h3", {}, said.setUps);
  if (versions.length === 0) return [title, element("p", { class: "quiet" }, said.nothing)];
  const rows = versions.map((version) => [
    version.entry.id,
    timeOf(version.entry.at),
    version.entry.car.name,
    newIn(version),
    version.entry.note ?? "",
  ]);
  const head = [columns.id, columns.at, columns.car, columns.changes, columns.note];
  return [
    title,
    table(said.setUps, head, rows),
    ...(versions.length > 1 ? [compare(versions)] : []),
  ];
}

function newIn({ entry, before, changes, other }: Version): HTMLElement | string {
  if (entry.follows === undefined) return said.asMeasured;
  const labels = changes.map((change) => changeLabel(change, before ?? entry.car, reader));
  const lines = [...labels, ...(other.length > 0 ? [said.otherFields(other.join(", "))] : [])];
  return lines.length === 0 ? said.sameAsBefore : listOf(lines);
}

function compare(versions: readonly Version[]): HTMLElement {
  const result = element("div", { role: "status", id: "differences" });
  const choose = (id: string, label: string, at: number) => {
    const select = element("select", { id });
    select.append(
      ...versions.map(({ entry }, i) => {
        const text = `${entry.id}, ${entry.car.name}, ${timeOf(entry.at)}`;
        return element("option", { value: String(i), selected: i === at }, text);
      }),
    );
    select.addEventListener("change", show);
    return {
      select,
      field: element("div", { class: "field" }, element("label", { for: id }, label), select),
    };
  };
  const from = choose("compare-from", said.compareFrom, 0);
  const to = choose("compare-to", said.compareTo, versions.length - 1);

  function show(): void {
    const before = versions[Number(from.select.value)]?.entry.car;
    const after = versions[Number(to.select.value)]?.entry.car;
    if (before === undefined || after === undefined) return;
    const { changes, other } = differenceOfSetUps(before, after);
    const lines = changes.map((change) => changeLabel(change, before, reader));
    const all = [...lines, ...other];
    refill(result, all.length === 0 ? element("p", {}, said.noDifference) : listOf(all));
  }
  show();
  return element(
    "details",
    { id: "compare" },
    element("summary", {}, said.compare),
    element("div", { class: "fields" }, from.field, to.field),
    result,
  );
}
