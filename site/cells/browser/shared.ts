/** The entry of the script that every chapter page loads first. */
import * as lib from "@rollbook/lib";
import * as cells from "./index.js";
import { loadReader } from "./load-reader.js";

loadReader();
Object.assign(globalThis, { rollbook: { lib, cells } });
