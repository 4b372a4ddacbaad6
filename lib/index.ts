/** Everything a chapter, a page or a test may call. One line a module, in reading order. */
export * from "./check.js";
export * from "./linkage/front-view.js";
export * from "./linkage/front-view-axle.js";
export * from "./linkage/front-view-drawing.js";
export * from "./linkage/instant-centre.js";
export * from "./linkage/jacking.js";
export * from "./linkage/move-front-view.js";
export * from "./linkage/roll-centre.js";
export * from "./parameters.js";
export * from "./solve.js";
export * from "./tyre/load-sensitive.js";
export * from "./tyre/magic-formula.js";
export * from "./tyre/magic-formula-1987.js";
export * from "./tyre/pair.js";
export * from "./tyre/tyre.js";
export * from "./tyre/valid-range.js";
export * from "./units.js";
