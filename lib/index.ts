/** Everything a chapter, a page or a test may call. */

export * from "./day.js";
export * from "./measure.js";
export * from "./physics.js";
