import { emptyMap, type MapGrid, type MapOf, type SetUpMap, setRow } from "@rollbook/lib";

/** A map that is to be worked out in full. */
export interface Wanted {
  readonly of: MapOf;
  readonly grid: MapGrid;
  /** Told after each row which part of the map is there. */
  readonly onPart?: (part: number) => void;
  /** Whether the page itself is at work meanwhile and needs a core left to it. */
  readonly aside?: boolean;
  readonly onDone: (map: SetUpMap) => void;
}

/** A map that is being worked out, row by row, by whoever asks for the next one. */
export interface Job extends Pick<Wanted, "of" | "grid"> {
  readonly number: number;
  /** The next row that nobody has; nothing where all are taken. */
  take(): number | undefined;
  put(row: number, worked: SetUpMap): void;
}

export function jobFor({ of, grid, onPart, onDone }: Wanted, number: number): Job {
  const map = emptyMap(grid);
  let [next, there] = [0, 0];
  return {
    of,
    grid,
    number,
    take: () => (next < map.rows ? next++ : undefined),
    put(row, worked) {
      setRow(map, row, worked);
      there += 1;
      onPart?.(there / map.rows);
      if (there === map.rows) onDone(map);
    },
  };
}
