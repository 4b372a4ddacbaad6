import { documentOf } from "@rollbook/page";
import { asMeasurements, type Measurements, nothingMeasured } from "./measured-sheets.js";

/** What was read off cars on this device. */
export const measurements = documentOf<Measurements>({
  key: "measurements",
  empty: nothingMeasured,
  read: asMeasurements,
});
