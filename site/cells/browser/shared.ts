/** The entry of the script that every page loads first. */
import * as lib from "@rollbook/chapters";
import { reader } from "../reader.js";
import { chosenCar } from "./garage.js";
import * as cells from "./index.js";
import { dropLeftOvers } from "./left-over.js";
import { completeMasthead } from "./masthead.js";
import * as page from "./page.js";
import { watchForFaults } from "./program-fault.js";
import { shareFromHere } from "./share-link.js";
import { spellProse } from "./spelling.js";
import { chosenUnits } from "./units.js";
import { offerWarmUp } from "./warm-up.js";

watchForFaults();
reader.units = chosenUnits();
reader.car = chosenCar();
Object.assign(globalThis, { rollbook: { lib, cells, page } });
spellProse();
completeMasthead();
offerWarmUp();
dropLeftOvers();
shareFromHere();
