import { mapAxesOf } from "@rollbook/lib";
import { chosenCar, placeOf } from "@rollbook/page";
import { words } from "../../say/map.js";
import { inChosenClass } from "../../store/classes.js";
import { show } from "../../ui/show.js";
import { LiveMap } from "./live.js";
import { firstState } from "./state.js";
import { MapView } from "./view/map-view.js";

function open(place: HTMLElement): void {
  const car = inChosenClass(chosenCar());
  const axes = mapAxesOf(car);
  const first = firstState(axes);
  if (first === undefined) show(<p>{words.tooFew(car.name)}</p>, place);
  else show(<MapView live={new LiveMap(car, axes, first)} first={first} />, place);
}

const place = placeOf("map");
if (place) open(place);
