import { element } from "@rollbook/page";
import { words } from "../words.js";
import { button } from "./fields.js";

/** What a room sees: large, and without anything meant for the instructor. */
export interface Wall {
  readonly place: HTMLElement;
  readonly shown: HTMLElement;
  readonly question: HTMLElement;
  open(): void;
}

/**
 * @param label - what it shows, for those who do not see it
 * @param opener - id of the button that opens it, where the reader is when it closes
 */
export function wall(label: string, opener: string): Wall {
  const shown = element("div", {});
  const question = element("div", { class: "wall-question" });
  const leave = button(`leave-${opener}`, words.run.leaveWall, () => close());
  const place = element(
    "div",
    { class: "wall", tabindex: -1, "aria-label": label, role: "region" },
    leave,
    shown,
    question,
  );
  const close = () => {
    delete document.documentElement.dataset.wall;
    if (document.fullscreenElement !== null) void document.exitFullscreen();
    document.getElementById(opener)?.focus();
  };
  place.addEventListener("keydown", (event) => {
    if (event.key === "Escape") close();
  });
  document.addEventListener("fullscreenchange", () => {
    if (document.fullscreenElement === null) delete document.documentElement.dataset.wall;
  });
  const open = () => {
    document.documentElement.dataset.wall = "";
    place.focus();
    void place.requestFullscreen?.().catch(() => {});
  };
  return { place, shown, question, open };
}
