/** The entry of the script with which a page draws axes of its own; loaded where one needs it. */
import { offerFrame } from "@rollbook/page";
import { frame } from "./axes.js";

offerFrame(frame);
