import { useComputed } from "@preact/signals";
import { demoCar } from "@rollbook/lib";
import { spell } from "@rollbook/page";
import { formWords as words } from "../../../say/your-car/form.js";
import { sectionWords } from "../../../say/your-car/sections.js";
import { Button } from "../../../ui/button.js";
import { confirmed, withPart } from "../model/draft.js";
import { placesIn } from "../model/on-form.js";
import type { Section } from "../sections.js";
import { change } from "../state/doing.js";
import { asDemo, baseAt, faultAt, openDraft } from "../state/open.js";
import { goTo, idOf } from "./go-to.js";
import { ItemOfForm } from "./items.js";
import { Scales } from "./scales.js";
import { TyreTool } from "./tyre-tool.js";

/** Sections that are open, by id, as the reader left them. */
const open = new Set(["name", "sizes"]);

function State({ wrong, left }: { readonly wrong: number; readonly left: number }) {
  const told = [wrong ? words.faults(wrong) : "", left ? words.asDemo(left, demoCar.name) : ""];
  return (
    <span class={wrong ? "state wrong" : "state"}>
      {told.filter((text) => text !== "").join(" · ")}
    </span>
  );
}

/** A fold of the form, with what is wrong in it and what is still the demo car's. */
export function SectionOfForm({ section }: { readonly section: Section }) {
  const { id, items, tool } = section;
  const { title, opening } = sectionWords[id] ?? { title: id };
  const places = useComputed(() => placesIn(section, openDraft.value?.base ?? {}));
  const wrong = useComputed(() => places.value.filter((path) => faultAt(path) !== "").length).value;
  const left = useComputed(
    () => places.value.filter((path) => asDemo.value.has(path)).length,
  ).value;
  const confirm = () => {
    change((draft) => confirmed(draft, places.value));
    goTo(`head-${id}`);
  };
  return (
    <details
      class="section"
      id={`section-${id}`}
      open={open.has(id)}
      onToggle={({ currentTarget }) => open[currentTarget.open ? "add" : "delete"](id)}
    >
      <summary id={`head-${id}`}>
        <h2>{spell(title)}</h2> <State wrong={wrong} left={left} />
      </summary>
      {opening && <p class="opening">{spell(opening)}</p>}
      {id === "links" && <Linked end="front" />}
      {id === "links" && <Linked end="rear" />}
      {tool === "scales" && <Scales />}
      {tool === "tyre" && <TyreTool />}
      {items.map((item, i) => (
        <ItemOfForm key={i} item={item} />
      ))}
      <Button hidden={left === 0} work={confirm}>
        {words.confirm}
      </Button>
    </details>
  );
}

/** What the page says of an axle whose file has the joints of its links. */
function Linked({ end }: { readonly end: "front" | "rear" }) {
  const path = `${end}.linkage`;
  const has = useComputed(() => baseAt(path) !== undefined).value;
  if (!has) return null;
  const take = () => {
    change((draft) => withPart(draft, path, undefined));
    goTo(idOf(`${end}.geometry.rollCentreHeight`));
  };
  return (
    <p class="note">
      {words.linked(end)} <Button work={take}>{words.unlink(end)}</Button>
    </p>
  );
}
