import type { FigureSpec, Inputs } from "../spec.js";
import { showLive } from "./show.js";
import { still } from "./still.js";

/** A picture with its result in a sentence; on the page it comes alive under its inputs. */
export const figure = <const I extends Inputs>(spec: FigureSpec<I>): void => showLive(still(spec));
