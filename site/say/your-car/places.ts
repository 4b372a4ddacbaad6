import { generalPlace, type Path } from "@rollbook/lib";
import { fields } from "./fields.js";
import { levers, reachEnds } from "./levers.js";
import { partWords } from "./sections.js";

const endOf = (path: Path) => /(?:^|\.)(front|rear)\b/.exec(path)?.[1];
const sideOf = (path: Path) => /\.(left|right)\b/.exec(path)?.[1];

/** Which of several alike places this is, such as "front left". */
export const whereOf = (path: Path): string =>
  [endOf(path), sideOf(path)].filter((word) => word !== undefined).join(" ");

const inside: Readonly<Record<string, string>> = {
  driver: "Driver",
  passenger: "Passenger",
  fuel: "Fuel",
  ballast: "Ballast",
};

/** The name of a place in full, such as "Track, front". */
export function nameOf(path: Path): string {
  const [, lever = "", end = ""] = /adjusters\.(\w+)(?:\.(\w+))?$/.exec(path) ?? [];
  const label = lever
    ? (levers[lever] ?? lever)
    : (fields[generalPlace(path)]?.label ?? partWords[path] ?? path);
  const within = inside[path.split(".")[0] ?? ""] ?? "";
  const position = /positions\.(\d+)/.exec(path)?.[1];
  const parts = [
    within,
    label,
    reachEnds[end] ?? "",
    position === undefined ? "" : `position ${Number(position) + 1}`,
    whereOf(path),
  ];
  return parts.filter((part) => part !== "").join(", ");
}
