import { readerWith, spelt } from "../say/reader.js";
import type { UnitSystem } from "../say/units.js";

/** A page's HTML as a reader in those units spells it; tags stay as they are. */
export const spelledFor = (html: string, units: UnitSystem): string =>
  units === "us"
    ? html
        .split(/(<[^>]+>)/)
        .map((piece) => (piece.startsWith("<") ? piece : spelt(piece, readerWith(units))))
        .join("")
    : html;
