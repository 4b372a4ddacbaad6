import { effect } from "@preact/signals-core";
import { words } from "../words.js";
import { element } from "./element.js";
import { isStill } from "./motion.js";

/** A value that can run with the clock. */
export interface Running {
  readonly min: number;
  readonly max: number;
  now(): number;
  set(value: number): void;
}

const SLOW = 0.25; // of real time
const MOMENTS = 6; // at which a reader stops who wants nothing to move by itself

/** On by a part of the way, and from the end to the start. */
function toNextMoment(running: Running): void {
  const part = (running.max - running.min) / MOMENTS;
  const next = running.now() + part;
  running.set(next > running.max + part / 2 ? running.min : Math.min(running.max, next));
}

/** Buttons that let a value run: play and pause, slowly or not, and where nothing may move, from moment to moment. */
export function player(running: Running): HTMLElement {
  const play = element("button", { type: "button", class: "play" }, words.play);
  const slow = element("button", { type: "button", "aria-pressed": "false" }, words.slowly);
  let frame = 0;
  const halt = () => {
    cancelAnimationFrame(frame);
    frame = 0;
    play.textContent = isStill() ? words.nextMoment : words.play;
  };
  const run = () => {
    if (running.now() >= running.max) running.set(running.min);
    let last = performance.now();
    const tick = (now: number) => {
      const pace = slow.getAttribute("aria-pressed") === "true" ? SLOW : 1;
      const next = running.now() + (pace * Math.max(0, now - last)) / 1000;
      last = now;
      running.set(Math.min(running.max, next));
      if (next >= running.max) halt();
      else frame = requestAnimationFrame(tick);
    };
    play.textContent = words.pause;
    frame = requestAnimationFrame(tick);
  };
  play.addEventListener("click", () => {
    if (frame !== 0) halt();
    else if (isStill()) toNextMoment(running);
    else run();
  });
  slow.addEventListener("click", () => {
    slow.setAttribute("aria-pressed", String(slow.getAttribute("aria-pressed") !== "true"));
  });
  effect(() => {
    slow.hidden = isStill();
    halt();
  });
  return element("div", { class: "player" }, play, slow);
}
