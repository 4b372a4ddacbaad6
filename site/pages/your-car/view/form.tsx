import { spell } from "@rollbook/page";
import { formWords as words } from "../../../say/your-car/form.js";
import { Button } from "../../../ui/button.js";
import type { Fault } from "../model/faults.js";
import { nearestOnForm } from "../model/on-form.js";
import { sections } from "../sections.js";
import { discard, save } from "../state/doing.js";
import { faults, openDraft } from "../state/open.js";
import { goTo, idOf } from "./go-to.js";
import { SectionOfForm } from "./section.js";

/** A fault as a link to its box. */
function LinkToBox({ fault: { path, sentence } }: { readonly fault: Fault }) {
  const id = idOf(nearestOnForm(path, openDraft.value?.base ?? {}));
  const go = (event: Event) => {
    event.preventDefault();
    goTo(id);
  };
  return (
    <li>
      <a href={`#${id}`} onClick={go}>
        {spell(sentence)}
      </a>
    </li>
  );
}

/** All faults at once. */
function FaultList() {
  const all = faults.value;
  return (
    <div class="faults" id="faults" tabIndex={-1}>
      {all.length > 0 && (
        <>
          <h3>{words.faults(all.length)}</h3>
          <ul>
            {all.map((fault) => (
              <LinkToBox key={`${fault.path} ${fault.sentence}`} fault={fault} />
            ))}
          </ul>
        </>
      )}
    </div>
  );
}

/** The car being worked on, field by field, and what to do with it at the end. */
export function Form() {
  return (
    <div class="form-place">
      <div class="form">
        {sections.map((section) => (
          <SectionOfForm key={section.id} section={section} />
        ))}
        <FaultList />
      </div>
      <div class="doing ends">
        <Button id="save-and-show" work={() => void save(true)}>
          {words.saveAndShow}
        </Button>
        <Button id="save" work={() => void save(false)}>
          {words.save}
        </Button>
        <Button id="discard" work={discard}>
          {words.discard}
        </Button>
        <p class="note">{words.draftKept}</p>
      </div>
    </div>
  );
}
