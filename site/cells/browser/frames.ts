import type { frame } from "../../frame/axes.js";
import { frameKey } from "../frame-key.js";
import { isChart, type Layout } from "../layout.js";
import { reader } from "../reader.js";
import type { Panel } from "../spec.js";
import { words } from "../words.js";
import { ownScript } from "./trusted.js";

type DrawFrame = typeof frame;

let arrived: (draw: DrawFrame) => void = () => {};
let loading: Promise<DrawFrame> | undefined;

/** Takes what the script of frames brings, asked for or not. */
export function offerFrame(draw: DrawFrame): void {
  loading ??= Promise.resolve(draw);
  arrived(draw);
}

/** Loads the script of frames, once; a reader of the workbook's own car in metric units never does. */
function frameScript(): Promise<DrawFrame> {
  loading ??= new Promise((resolve, reject) => {
    arrived = resolve;
    const script = ownScript("frame.js");
    script.addEventListener("error", () => reject(new Error(words.noAxes)));
    document.head.append(script);
  });
  return loading;
}

/**
 * Puts axes that fit this reader in place of the kernel's, where those do not.
 *
 * Axes that do not fit are taken away at once, so that nobody reads a curve against them.
 *
 * @returns when the axes are there; rejected with a sentence when they cannot be had
 */
export async function fitFrame<Values>(
  picture: Element,
  panel: Panel<Values>,
  layout: Layout,
): Promise<void> {
  const present = picture.querySelector<SVGElement>("[data-frame]");
  if (!present || !isChart(panel)) return;
  if (present.dataset.frame === frameKey(panel, reader.units)) return;
  present.replaceChildren();
  const draw = await frameScript();
  present.replaceWith(draw(document, panel, layout, reader.units));
}
