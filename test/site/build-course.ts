import { buildIfChanged } from "../../site/build/build-if-changed.js";

/** The course that the tests look at is built once before them. */
export default async function setup(): Promise<void> {
  await buildIfChanged(() => {});
}
