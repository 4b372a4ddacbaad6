/** What the command prints: the report, and notes beside it. */
export interface Printed {
  readonly out: string;
  readonly err: string;
  /** Set where the command ends with another code than 0. */
  readonly code?: 1;
}
