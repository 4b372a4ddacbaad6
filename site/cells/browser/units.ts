import type { UnitSystem } from "@rollbook/lib";
import { keep, recall } from "./store.js";

const key = "units";
const asUnits = (value: unknown): UnitSystem | undefined =>
  value === "us" || value === "metric" ? value : undefined;

export const chosenUnits = (): UnitSystem => recall(key, asUnits) ?? "metric";

export const chooseUnits = (units: UnitSystem): boolean => keep(key, units);
