import type { Venue } from "@rollbook/lib";
import { element } from "@rollbook/page";
import { theDay } from "../day/open-day.js";
import { button, linesField, textField } from "../parts/fields.js";
import { say } from "../parts/notice.js";
import { refill } from "../parts/refill.js";
import { words } from "../words.js";
import { type CornerWork, cornerFields, plainCorner } from "./corner.js";
import { freeName, isTaken, moved, withCorner } from "./corners.js";
import { edit } from "./people.js";

const { plan } = words;
const MOST_CORNERS = 60;

/** The place and its corners, each field at once in the draft. */
export function venueEditor(): HTMLElement[] {
  const list = element("div", { class: "corners", id: "corners" });
  const draw = () => refill(list, ...corners(draw), addButton(draw));
  const venue = venueNow();
  const named = (name: string) => {
    if (name === "") return plan.noName;
    setVenue((now) => ({ ...now, name }));
    return undefined;
  };
  const noted = (notes: string) => {
    setVenue(({ notes: _, ...now }) => (notes.trim() === "" ? now : { ...now, notes }));
    return undefined;
  };
  draw();
  return [
    textField("venue-name", plan.venueName, venue.name, named),
    linesField("venue-notes", plan.venueNotes, venue.notes ?? "", noted),
    list,
  ];
}

const venueNow = (): Venue => theDay()?.venue ?? { name: "", corners: [] };
const setVenue = (with_: (venue: Venue) => Venue): void =>
  edit((day) => ({ ...day, venue: with_(day.venue) }));

function corners(draw: () => void): HTMLElement[] {
  return venueNow().corners.map((corner, i) => cornerFields(corner, i, workOn(i, draw)));
}

function workOn(index: number, draw: () => void): CornerWork {
  return {
    change: (corner) => setVenue((venue) => withCorner(venue, index, corner)),
    move: (by) => {
      setVenue((venue) => ({ ...venue, corners: moved(venue.corners, index, by) }));
      draw();
      document.getElementById(`corner-${index + by}-${by < 0 ? "up" : "down"}`)?.focus();
    },
    remove: () => removeCorner(index, draw),
    faultOfName: (name) => (isTaken(venueNow(), index, name) ? plan.sameCorner(name) : undefined),
  };
}

function removeCorner(index: number, draw: () => void): void {
  const before = venueNow();
  const name = before.corners[index]?.name ?? "";
  if (before.corners.length < 2) return;
  setVenue((venue) => ({ ...venue, corners: venue.corners.filter((_, i) => i !== index) }));
  draw();
  document.getElementById("corner-add")?.focus();
  const undo = () => {
    setVenue(() => before);
    draw();
  };
  say(plan.removed(name), { label: words.takeBack, work: undo });
}

function addButton(draw: () => void): HTMLElement {
  const add = () => {
    const venue = venueNow();
    if (venue.corners.length >= MOST_CORNERS) return;
    const corner = plainCorner(freeName(venue, plan.corner));
    setVenue((now) => ({ ...now, corners: [...now.corners, corner] }));
    draw();
    document.getElementById(`corner-${venue.corners.length}-name`)?.focus();
  };
  return button("corner-add", plan.addCorner, add);
}
