import { quantities } from "../../units.js";
import { certaintyShape } from "./car-shape.js";
import { inShort } from "./in-short.js";
import { type Content, numberAt } from "./place.js";
import { validatorOf } from "./validate.js";

const faultsOfEntry = validatorOf(certaintyShape);

/** What is wrong with what a content says of how sure its numbers are, one sentence each. */
export function knownFaultsOf(content: Content): string[] {
  return entriesOf(content).flatMap(([path, entry]) => entryFaults(content, path, entry));
}

/**
 * The content with those of its entries that are sound and name a number that it has: an entry goes
 * with its number when a part is taken out.
 */
export function withSoundKnown(content: Content): Content {
  if (content.known === undefined) return content;
  const sound = entriesOf(content).filter(
    ([path, entry]) => entryFaults(content, path, entry).length === 0,
  );
  return { ...content, known: Object.fromEntries(sound) };
}

function entriesOf({ known }: Content): [string, unknown][] {
  return typeof known === "object" && known !== null ? Object.entries(known) : [];
}

function entryFaults(content: Content, path: string, entry: unknown): string[] {
  const place = numberAt(content, path);
  if (place === undefined) return [`known has ${inShort(path)}, but the car has no such number.`];
  const faults = faultsOfEntry(entry);
  if (faults.length > 0) return faults.map((fault) => `known.${path}.${fault}`);
  const { spread = 0 } = entry as { spread?: number };
  const { min, max, quantity } = place.shape;
  const most = Number((max - min).toPrecision(6));
  const unit = quantities[quantity].si;
  if (spread <= max - min) return [];
  return [`known.${path}.spread is ${spread} but must be from 0 to ${`${most} ${unit}`.trim()}.`];
}
