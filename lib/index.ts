/** Everything a chapter, a page or a test may call. One line a module, in reading order. */
export * from "./check.js";
export * from "./solve.js";
export * from "./units.js";
export * from "./parameters.js";
