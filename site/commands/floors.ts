import { inRoot } from "../build/paths.js";
import { faultsIn, floorsOfLib } from "./floors/floors.js";
import { importsIn } from "./floors/imports.js";
import { proseBelow } from "./floors/prose.js";

const lib = inRoot("lib");
const faults = [...faultsIn(importsIn(lib), floorsOfLib), ...proseBelow(lib)];
for (const fault of faults) console.error(`lib: ${fault}`);
if (faults.length > 0) process.exitCode = 1;
