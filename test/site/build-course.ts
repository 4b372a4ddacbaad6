import { buildIfChanged } from "../../site/build/build-if-changed.js";

/** The course that the tests look at is built once before them; `DIST` is one that is built already. */
export default async function setup(): Promise<void> {
  if (process.env.DIST === undefined) await buildIfChanged(() => {});
}
