/** What a worked figure of a chapter must be, by its id. */
export type Pins = Readonly<
  Record<
    string,
    {
      /** SI, from plain arithmetic or a published source, never from lib. */
      readonly value: number;
      /** Where the value is from. */
      readonly from: string;
      /** Allowed relative difference; 1e-6 where absent, else with its reason in `from`. */
      readonly within?: number;
    }
  >
>;
