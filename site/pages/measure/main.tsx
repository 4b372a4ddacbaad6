import { ownCars, placeOf, spell } from "@rollbook/page";
import { words } from "../../say/measure/words.js";
import { drafts, ownPlaces } from "../../store/car-drafts.js";
import { firstCarTyped } from "../../store/first-car-typed.js";
import { measurements } from "../../store/measurements.js";
import { TextField } from "../../ui/field.js";
import { Notice } from "../../ui/notice.js";
import { show } from "../../ui/show.js";
import { FirstCarForm } from "./first/view.js";
import { LearnView } from "./learn/view.js";
import { specs } from "./model/spec.js";
import { followCarAtHand, followLink } from "./next/state.js";
import { NextToMeasure } from "./next/view.js";
import { carAtHand, isOwn, typeBy } from "./state/sheet.js";
import { Form } from "./view/form.js";
import { TogetherView } from "./view/together.js";

/** Which car the readings are about, and who reads. */
function MeasuringFor() {
  const { name } = carAtHand.value;
  return (
    <>
      <Notice />
      <p class="for">{isOwn.value ? words.forOwn(name) : words.forDemo(name)}</p>
      <TextField
        id="measured-by"
        label={words.by}
        note={words.byNote}
        value={measurements.now.value.by}
        maxLength={80}
        type={typeBy}
      />
    </>
  );
}

/** What stands on the page already, in the reader's spelling. */
function respell(place: Node): void {
  const texts = document.createTreeWalker(place, NodeFilter.SHOW_TEXT);
  while (texts.nextNode()) {
    const { currentNode } = texts;
    const text = currentNode.nodeValue ?? "";
    if (spell(text) !== text) currentNode.nodeValue = spell(text);
  }
}

const head = placeOf("measuring-for");
if (head) {
  respell(document.getElementById("main") ?? head);
  show(<MeasuringFor />, head);
  for (const spec of specs) {
    const place = placeOf(`form-${spec.id}`);
    if (place) show(<Form spec={spec} />, place);
  }
  const places = [
    ["form-first-car", <FirstCarForm />],
    ["together", <TogetherView />],
    ["form-learn", <LearnView />],
    ["form-next", <NextToMeasure />],
  ] as const;
  for (const [id, view] of places) {
    const place = placeOf(id);
    if (place) show(view, place);
  }
  followCarAtHand();
  void Promise.all(
    [measurements, ownCars, drafts, ownPlaces, firstCarTyped].map((one) => one.open()),
  ).then(followLink);
}
