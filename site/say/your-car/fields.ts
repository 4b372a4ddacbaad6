import { axleFields } from "./axle-fields.js";
import { carFields } from "./car-fields.js";
import type { FieldWords } from "./field-words.js";

/** Label and help of every field, by its general place. */
export const fields: Readonly<Record<string, FieldWords>> = { ...carFields, ...axleFields };
