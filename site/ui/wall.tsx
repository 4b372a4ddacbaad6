import type { ComponentChildren } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { words } from "../say/ui.js";
import { Button } from "./button.js";

const root = () => document.documentElement;

/** Opens the wall of the view that is seen: as large as the screen, where the browser lets it. */
export function openWall(): void {
  const walls = [...document.querySelectorAll<HTMLElement>(".wall")];
  const place = walls.find((wall) => wall.closest("[hidden]") === null);
  if (place === undefined) return;
  root().dataset.wall = "";
  place.focus();
  void place.requestFullscreen?.().catch(() => {});
}

function closeWall(opener: string): void {
  delete root().dataset.wall;
  if (document.fullscreenElement !== null) void document.exitFullscreen();
  document.getElementById(opener)?.focus();
}

/** What a room sees: large, and without anything meant for the instructor. */
export function Wall({
  label,
  opener,
  children,
}: {
  /** What it shows, for those who do not see it. */
  readonly label: string;
  /** Id of the button that opens it, where the reader is when it closes. */
  readonly opener: string;
  readonly children: ComponentChildren;
}) {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const left = () => {
      if (document.fullscreenElement === null) delete root().dataset.wall;
    };
    document.addEventListener("fullscreenchange", left);
    return () => document.removeEventListener("fullscreenchange", left);
  }, []);
  const onKeyDown = ({ key }: KeyboardEvent) => {
    if (key === "Escape") closeWall(opener);
  };
  return (
    <div
      ref={place}
      class="wall"
      tabIndex={-1}
      aria-label={label}
      role="region"
      onKeyDown={onKeyDown}
    >
      <Button id={`leave-${opener}`} work={() => closeWall(opener)}>
        {words.leaveWall}
      </Button>
      {children}
    </div>
  );
}
