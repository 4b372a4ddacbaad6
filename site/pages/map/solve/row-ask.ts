import type { MapGrid, MapOf, SetUpMap } from "@rollbook/lib";

/** What a worker is asked for: one row of a map. */
export interface RowAsk {
  readonly job: number;
  readonly of: MapOf;
  readonly grid: MapGrid;
  readonly row: number;
}

export interface RowAnswer {
  readonly job: number;
  readonly row: number;
  readonly worked: SetUpMap;
}
