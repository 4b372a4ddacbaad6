import { mapAxesOf } from "@rollbook/lib";
import { chosenCar, placeOf } from "@rollbook/page";
import { render } from "preact";
import { words } from "../../say/map.js";
import { LiveMap } from "./live.js";
import { firstState } from "./state.js";
import { MapView } from "./view/map-view.js";

function open(place: HTMLElement): void {
  const car = chosenCar();
  const axes = mapAxesOf(car);
  const first = firstState(axes);
  place.replaceChildren(); // what stands there without a script
  if (first === undefined) render(<p>{words.tooFew(car.name)}</p>, place);
  else render(<MapView live={new LiveMap(car, axes, first)} first={first} />, place);
}

const place = placeOf("map");
if (place) open(place);
