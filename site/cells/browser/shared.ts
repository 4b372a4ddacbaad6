/** The entry of the script that every chapter page loads first. */
import * as lib from "@rollbook/lib";
import * as cells from "./index.js";

Object.assign(globalThis, { rollbook: { lib, cells } });
