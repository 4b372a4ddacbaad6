import { element } from "@rollbook/page";
import { button } from "../parts/fields.js";
import { words } from "../words.js";

/** What a room sees: large, and without anything meant for the instructor. */
export interface Wall {
  readonly place: HTMLElement;
  readonly shown: HTMLElement;
  readonly question: HTMLElement;
  open(): void;
}

export function wall(): Wall {
  const shown = element("div", {});
  const question = element("div", { class: "wall-question" });
  const leave = button("leave-wall", words.run.leaveWall, () => close());
  const place = element(
    "div",
    { class: "wall", tabindex: -1, "aria-label": words.run.wall, role: "region" },
    leave,
    shown,
    question,
  );
  const close = () => {
    delete document.documentElement.dataset.wall;
    if (document.fullscreenElement !== null) void document.exitFullscreen();
    document.getElementById("open-wall")?.focus();
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
