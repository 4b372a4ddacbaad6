import { fromHandy } from "../../units.js";
import type { Venue } from "../plan/venue.js";

/** An invented venue: seven corners on a heath. */
export const exampleVenue: Venue = {
  name: "Plover Heath",
  notes: "Invented for this workbook.",
  corners: [
    { name: "Gate", direction: "right", radius: 18, speed: 12.5, surface: "smooth" },
    { name: "Long Left", direction: "left", radius: 85, speed: 27, surface: "smooth" },
    {
      name: "Dip",
      direction: "right",
      radius: 40,
      speed: 18.5,
      grade: -0.05,
      surface: "some bumps",
    },
    {
      name: "Barn",
      direction: "left",
      radius: 30,
      speed: 15.5,
      banking: fromHandy("angle", -2),
      surface: "rough",
    },
    { name: "Crest", direction: "right", radius: 60, speed: 22.5, grade: 0.04, surface: "smooth" },
    {
      name: "Orchard",
      direction: "left",
      radius: 120,
      speed: 33,
      banking: fromHandy("angle", 3),
      surface: "smooth",
    },
    { name: "Last", direction: "right", radius: 45, speed: 19.5, surface: "some bumps" },
  ],
};
