import { documentOf } from "./document.js";

/** Where other devices find the course, as the reader typed it; empty where nobody said. */
export const courseAddress = documentOf({
  key: "course-address",
  empty: "",
  read: (kept) => (typeof kept === "string" && kept.length < 300 ? kept : undefined),
});
