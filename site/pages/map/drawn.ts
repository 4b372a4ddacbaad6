import { type PlaceState, placeStates, type SetUpMap } from "@rollbook/lib";

/** Values of a map where there is a balance to draw. */
export const drawnOf = ({ state }: SetUpMap, values: Float64Array): Float64Array =>
  values.filter((_, at) => state[at] === 0);

/** Why there is nothing to draw in parts of a map; each reason once. */
export const undrawnIn = ({ state }: SetUpMap): Exclude<PlaceState, "balanced">[] =>
  placeStates
    .filter((one) => one !== "balanced")
    .filter((one) => state.includes(placeStates.indexOf(one)));
