import { useComputed } from "@preact/signals";
import { carShape, demoCar } from "@rollbook/lib";
import { spell } from "@rollbook/page";
import { fields } from "../../../say/your-car/fields.js";
import { formWords as words } from "../../../say/your-car/form.js";
import { levers, reachEnds } from "../../../say/your-car/levers.js";
import { nameOf, whereOf } from "../../../say/your-car/places.js";
import { partWords } from "../../../say/your-car/sections.js";
import { Button } from "../../../ui/button.js";
import { type Draft, withoutEntry, withPart } from "../model/draft.js";
import { beginning } from "../model/mend.js";
import { reachPlaces } from "../model/on-form.js";
import { keyOf, type Path, shapeAt, valueAt } from "../model/path.js";
import type { Item, List, Optional, Reach } from "../sections.js";
import { change } from "../state/doing.js";
import { baseAt, entriesAt } from "../state/open.js";
import { Boxes, FaultLine } from "./box.js";
import { goTo, idOf } from "./go-to.js";
import { How, RowOfBoxes } from "./row.js";

/** One line or part of the form. */
export function ItemOfForm({ item }: { readonly item: Item }) {
  if ("row" in item) return <RowOfBoxes general={item.row} />;
  if ("part" in item) return <PartOfCar {...item} />;
  if ("list" in item) return <Entries {...item} />;
  return <HowFar {...item} />;
}

const useHas = (path: Path): boolean => useComputed(() => baseAt(path) !== undefined).value;

/** A part as it was before it was taken out, else the demo car's, else the middle of its ranges. */
function partToPutIn({ removed }: Draft, path: Path): unknown {
  return removed[path] ?? valueAt(demoCar, path) ?? beginning(shapeAt(path) ?? carShape);
}

function Tick({ path, text }: { readonly path: Path; readonly text: string }) {
  const put = (wanted: boolean) =>
    change((draft) => withPart(draft, path, wanted ? partToPutIn(draft, path) : undefined));
  return (
    <label class="tick">
      <input
        type="checkbox"
        id={idOf(path)}
        checked={useHas(path)}
        onChange={({ currentTarget }) => put(currentTarget.checked)}
      />
      <span>{spell(text)}</span>
    </label>
  );
}

function PartOfCar({ part, items }: Optional) {
  const has = useHas(part);
  return (
    <fieldset class="part">
      <legend>
        <Tick path={part} text={partWords[part] ?? nameOf(part)} />
      </legend>
      <FaultLine path={part} />
      {has && items.map((item, i) => <ItemOfForm key={i} item={item} />)}
    </fieldset>
  );
}

const labelAt = (place: Path): string => fields[keyOf(place)]?.label ?? "";

function Entries({ list, columns }: List) {
  const count = useComputed(() => entriesAt(list).length).value;
  const { label, help = "" } = fields[keyOf(list)] ?? { label: list };
  const shape = shapeAt(list);
  const most = shape?.type === "list" ? shape.most : count;
  return (
    <div class="row">
      <div class="what">
        <span class="name">{label}</span>
        <How name={label} help={help} />
      </div>
      <ol class="positions">
        {Array.from({ length: count }, (_, i) => (
          <li key={i}>
            <Boxes paths={columns.map((name) => `${list}.${i}.${name}`)} captionOf={labelAt} />
            {count > 1 && (
              <Button aria-label={words.dropPosition(i + 1)} work={() => dropEntry(list, i)}>
                −
              </Button>
            )}
          </li>
        ))}
      </ol>
      <Button disabled={count >= most} work={() => addEntry(list)}>
        {words.addPosition}
      </Button>
    </div>
  );
}

/** Adds an entry like the last. */
function addEntry(list: Path): void {
  const entries = entriesAt(list);
  const next = { ...(entries.at(-1) as object | undefined) };
  change((draft) => withPart(draft, list, [...entries, next]));
  goTo(idOf(`${list}.${entries.length}.rate`));
}

function dropEntry(list: Path, index: number): void {
  change((draft) => withoutEntry(draft, list, index));
  goTo(idOf(`${list}.${Math.max(0, index - 1)}.rate`));
}

const lastPart = (path: Path): string => path.split(".").pop() ?? "";

/** How far a lever can be set, where it can be. */
function HowFar({ reach }: Reach) {
  const lever = lastPart(reach);
  const title = [levers[lever] ?? lever, whereOf(reach)].filter((word) => word !== "").join(", ");
  return (
    <div class="row reach">
      <Tick path={reach} text={title} />
      {useHas(reach) && (
        <Boxes paths={reachPlaces(reach)} captionOf={(place) => reachEnds[lastPart(place)] ?? ""} />
      )}
    </div>
  );
}
