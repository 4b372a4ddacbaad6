/** What is typed of ballast over the front axle at a ride rate, N/m of each wheel: kg put on, mm that both sides fell. */
export const ballastTexts = (rate: number, masses: readonly number[]): [string, string][] =>
  masses.flatMap((added, i) => {
    const fall = String((1000 * added * 9.80665) / (2 * rate));
    const at = (key: string) => `ride-rate.front.${key}.${i}`;
    return [
      [at("added"), String(added)],
      [at("fallLeft"), fall],
      [at("fallRight"), fall],
    ];
  });
