import { type Role, roles } from "../say/places.js";
import { documentOf } from "./document.js";

/** Whom the reader wants the menu for. */
export const chosenRole = documentOf<Role>({
  key: "role",
  empty: "",
  read: (kept) => roles.find((role) => role === kept) ?? (kept === "" ? "" : undefined),
});
