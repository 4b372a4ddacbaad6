import { type Signal, useSignal } from "@preact/signals";
import {
  cornerMomentAt,
  cornerParts,
  type Drives,
  distanceAfter,
  drivenLength,
  latestDrive,
} from "@rollbook/lib";
import { isStill } from "@rollbook/page";
import { useEffect, useRef } from "preact/hooks";
import { words } from "../../../say/practice/words.js";

/** Plays the latest drive in its own time; who asks for less motion goes part by part. */
export function usePlayer(drives: Drives, distance: Signal<number>) {
  const calm = isStill();
  const playing = useSignal(false);
  const frame = useRef(0);
  const halt = () => {
    cancelAnimationFrame(frame.current);
    playing.value = false;
  };
  useEffect(() => halt, []);
  const run = () => {
    const drive = latestDrive(drives);
    const end = drivenLength(drive) - 1;
    const from = distance.value >= end ? 0 : distance.value;
    const start = performance.now() - 1000 * cornerMomentAt(drive, from).time;
    const step = (now: number) => {
      const reached = distanceAfter(drive, Math.max(0, now - start) / 1000);
      distance.value = Math.min(reached, end);
      if (reached >= end) halt();
      else frame.current = requestAnimationFrame(step);
    };
    playing.value = true;
    frame.current = requestAnimationFrame(step);
  };
  const nextPart = () => {
    const parts = cornerParts(latestDrive(drives));
    const next = parts.find(({ from }) => from > distance.value + 0.5) ?? parts[0];
    distance.value = Math.ceil(next?.from ?? 0);
  };
  const press = () => {
    if (calm) nextPart();
    else if (playing.value) halt();
    else run();
  };
  const label = calm ? words.nextPart : playing.value ? words.pause : words.play;
  return { press, halt, label, playing: playing.value };
}
