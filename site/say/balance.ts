import { MINUS } from "./units.js";

/** A balance as drivers write it: −2, 0, +1. */
export const balanceText = (balance: number): string =>
  balance > 0 ? `+${balance}` : balance < 0 ? `${MINUS}${-balance}` : "0";
