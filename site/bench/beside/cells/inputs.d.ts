/** The part of the package that the cells use; it brings no types. */
declare module "@observablehq/inputs" {
  export function range(
    extent: readonly [min: number, max: number],
    options: { step: number; value: number; label: string; format: (value: number) => string },
  ): HTMLFormElement & { value: number };
}
