import { batch } from "@preact/signals";
import { shifted } from "@rollbook/lib";
import { say } from "../../../ui/notice.js";
import { words } from "../words.js";
import { jumpBetween, type Look } from "./jump.js";
import { clock, second, setClock } from "./state.js";

/** Shows the time each second; where the device's clock was set meanwhile, the day counts on as before. */
export function followDeviceClock(): void {
  const look = (): Look => ({ told: Date.now(), counted: performance.now(), away });
  let away = document.hidden;
  let [before, shown] = [look(), clock.now.value];
  addEventListener("visibilitychange", () => {
    away = true;
  });
  setInterval(() => {
    const now = look();
    const jump = jumpBetween(before, now);
    batch(() => {
      if (jump !== 0 && clock.now.value === shown) countOn(jump); // else another page has done it
      second.value = now.told;
    });
    away = document.hidden;
    [before, shown] = [now, clock.now.value];
  }, 1000);
}

function countOn(jump: number): void {
  const clockBefore = clock.now.value;
  if (clockBefore.since === undefined && clockBefore.begun === undefined) return;
  setClock(shifted(clockBefore, jump));
  say(words.run.jumped(Math.round(Math.abs(jump) / 60e3)), () => setClock(clockBefore));
}
