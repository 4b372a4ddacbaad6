import type { MapCell } from "./map-cell.js";
import { placeStates } from "./map-cell.js";
import type { MapGrid } from "./map-grid.js";

/** Balance and grip over two levers, row by row from the least of the upward lever. */
export interface SetUpMap {
  readonly columns: number;
  readonly rows: number;
  /** m/s², as `CarBalance.understeerMargin` */
  readonly understeerMargin: Float64Array;
  /** m/s², as `CarBalance.lateralAcceleration` */
  readonly lateralAcceleration: Float64Array;
  /** steps of the narrowest limit of the class, below 0 outside; Infinity without limits */
  readonly room: Float64Array;
  /** which of `placeStates` a place is in: above 0 there is no balance to draw */
  readonly state: Uint8Array;
}

/** A map with nothing in it yet. */
export function emptyMap({ along, up }: MapGrid): SetUpMap {
  const size = along.length * up.length;
  return {
    columns: along.length,
    rows: up.length,
    understeerMargin: new Float64Array(size),
    lateralAcceleration: new Float64Array(size),
    room: new Float64Array(size).fill(Infinity),
    state: new Uint8Array(size),
  };
}

/** Writes a place into a map. */
export function setCell(map: SetUpMap, at: number, cell: MapCell): void {
  map.understeerMargin[at] = cell.understeerMargin;
  map.lateralAcceleration[at] = cell.lateralAcceleration;
  map.room[at] = Math.min(...cell.rooms);
  map.state[at] = placeStates.indexOf(cell.state);
}

/** Writes a row that was worked out by itself into a map. */
export function setRow(map: SetUpMap, row: number, worked: SetUpMap): void {
  const at = row * map.columns;
  map.understeerMargin.set(worked.understeerMargin, at);
  map.lateralAcceleration.set(worked.lateralAcceleration, at);
  map.room.set(worked.room, at);
  map.state.set(worked.state, at);
}

/** Whether the class of the car gives limits at all. */
export const hasLimits = ({ room }: SetUpMap): boolean => room.some((steps) => steps < Infinity);
