/** What is said of a field. */
export interface FieldWords {
  readonly label: string;
  /** How to measure it, or what to do when it is not known. */
  readonly help?: string;
  /** What an empty box means. */
  readonly empty?: string;
}
