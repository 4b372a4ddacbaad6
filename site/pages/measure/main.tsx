import { ownCars, placeOf } from "@rollbook/page";
import { words } from "../../say/measure/words.js";
import { drafts, ownPlaces } from "../../store/car-drafts.js";
import { measurements } from "../../store/measurements.js";
import { TextField } from "../../ui/field.js";
import { Notice } from "../../ui/notice.js";
import { show } from "../../ui/show.js";
import { specs } from "./model/spec.js";
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

const head = placeOf("measuring-for");
if (head) {
  show(<MeasuringFor />, head);
  for (const spec of specs) {
    const place = placeOf(`form-${spec.id}`);
    if (place) show(<Form spec={spec} />, place);
  }
  const foot = placeOf("together");
  if (foot) show(<TogetherView />, foot);
  void Promise.all([measurements.open(), ownCars.open(), drafts.open(), ownPlaces.open()]);
}
