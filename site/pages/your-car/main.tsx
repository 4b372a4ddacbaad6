import { effect } from "@preact/signals";
import { placeOf } from "@rollbook/page";
import { show } from "../../ui/show.js";
import { readAddress } from "./state/brought.js";
import { openSecondCopies } from "./state/kept.js";
import { openDraft } from "./state/open.js";
import { followOpenCar } from "./state/worked-out.js";
import { AsideCars } from "./view/aside.js";
import { Brought } from "./view/brought.js";
import { CarList } from "./view/cars.js";
import { ClassPart } from "./view/classes.js";
import { FileResults } from "./view/file-results.js";
import { Form } from "./view/form.js";
import { HandOn } from "./view/hand-on.js";
import { SummaryBeside } from "./view/summary.js";
import { Told } from "./view/told.js";

function CarsAndForm() {
  return (
    <>
      <Brought />
      <CarList />
      <Told />
      <HandOn />
      <ClassPart />
      <AsideCars />
      <FileResults />
      {openDraft.value !== undefined && (
        <div class="side-by-side">
          <Form />
          <SummaryBeside />
        </div>
      )}
    </>
  );
}

/** What to measure is told as long as no car is open. */
function hideGuideBesideForm(): void {
  const guide = document.getElementById("guide");
  effect(() => {
    if (guide) guide.hidden = openDraft.value !== undefined;
  });
}

const place = placeOf("cars-and-form");
if (place) {
  followOpenCar();
  hideGuideBesideForm();
  show(<CarsAndForm />, place);
  void openSecondCopies().then(readAddress);
  addEventListener("hashchange", () => void readAddress());
}
