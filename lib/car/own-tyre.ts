import type { TyreData } from "../tyre/tyre-data.js";

/** A tyre by its coefficients. */
export interface OwnTyre {
  readonly name: string;
  readonly notes?: string;
  readonly coefficients: TyreData;
}
