import { ownCars, placeOf } from "@rollbook/page";
import { measurements } from "../../store/measurements.js";
import { Notice } from "../../ui/notice.js";
import { show } from "../../ui/show.js";
import { lookAgain } from "./state.js";
import { Rides } from "./view/list.js";
import { Recorder } from "./view/recorder.js";
import { Result } from "./view/result.js";
import { TakeIn } from "./view/take-in.js";

const places = [
  ["ride-notice", <Notice />],
  ["ride-recorder", <Recorder />],
  ["ride-list", <Rides />],
  ["ride-result", <Result />],
  ["ride-take-in-form", <TakeIn />],
] as const;

for (const [id, view] of places) {
  const place = placeOf(id);
  if (place) show(view, place);
}
void lookAgain();
void Promise.all([measurements, ownCars].map((one) => one.open()));
