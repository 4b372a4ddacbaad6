/** Builds this course of the compared chapters alone, in a process of its own so that it can be timed. */
import { buildIfChanged } from "../../build/build-if-changed.js";
import { ours } from "./chapters.js";

await buildIfChanged(() => {}, ours);
