import type { Car } from "../../car/car.js";
import { type Change, isEndChange } from "../../change/change.js";
import { labelOf } from "../../change/label.js";
import { parameters } from "../../parameters.js";
import { formatAlike } from "../../shown-range.js";
import type { UnitSystem } from "../../units.js";

/**
 * A change as practice names it: as on a card, but for seats, which are put back after every other
 * change and so have to say that here they are the change.
 */
export function labelHere(change: Change, car: Car, system: UnitSystem = "metric"): string {
  if (change.lever !== "seatTurns" || !isEndChange(change) || change.side !== undefined)
    return labelOf(change, car, system);
  const { quantity, decimals } = parameters.seatTurns;
  const turns = formatAlike(quantity, Math.abs(change.by), decimals, system);
  const [way, height] = change.by > 0 ? ["up", "higher"] : ["down", "lower"];
  const part = change.end === "front" ? "nose" : "tail";
  return `${change.end} spring seats ${way} by ${turns} (${part} left ${height})`;
}
