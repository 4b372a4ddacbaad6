import { inRoot } from "../build/paths.js";
import { faultsIn, floorsOfLib } from "./floors/floors.js";
import { importsIn } from "./floors/imports.js";

const faults = faultsIn(importsIn(inRoot("lib")), floorsOfLib);
for (const fault of faults) console.error(`lib: ${fault}`);
if (faults.length > 0) process.exitCode = 1;
