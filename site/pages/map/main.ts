import { mapAxesOf } from "@rollbook/lib";
import { chosenCar, element, placeOf } from "@rollbook/page";
import { firstState } from "./state.js";
import { liveMap } from "./view/live-map.js";
import { words } from "./words.js";

function open(place: HTMLElement): void {
  const car = chosenCar();
  const axes = mapAxesOf(car);
  const first = firstState(axes);
  if (first === undefined) place.replaceChildren(element("p", {}, words.tooFew(car.name)));
  else {
    const whose = element("p", { class: "whose-car" }, words.whose(car.name));
    place.replaceChildren(whose);
    liveMap(place, car, axes, first);
  }
}

const place = placeOf("map");
if (place) open(place);
