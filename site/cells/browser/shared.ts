/** The entry of the script that every page loads first. */
import * as signals from "@preact/signals-core";
import * as lib from "@rollbook/chapters";
import { chosenCar } from "../../store/cars.js";
import { followOtherPages, openAll } from "../../store/document.js";
import { chosenUnits } from "../../store/units.js";
import { reader } from "../reader.js";
import * as cells from "./index.js";
import { signWhatIsKept } from "./kept-sign.js";
import { dropLeftOvers } from "./left-over.js";
import { completeMasthead } from "./masthead.js";
import * as page from "./page.js";
import { watchForFaults } from "./program-fault.js";
import { shareFromHere } from "./share-link.js";
import { spellProse } from "./spelling.js";
import { offerWarmUp } from "./warm-up.js";

watchForFaults();
followOtherPages();
reader.units = chosenUnits.now.value;
reader.car = chosenCar();
Object.assign(globalThis, { rollbook: { lib, cells, page, signals } });
spellProse();
completeMasthead();
offerWarmUp();
dropLeftOvers();
shareFromHere();
signWhatIsKept((key) => key === "cars" && document.documentElement.dataset.page === "your-car");
addEventListener("load", () => void openAll(""));
