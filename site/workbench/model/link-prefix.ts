/** How the end of a link begins that brings edited cells. */
export const prefix = "#edited=";
