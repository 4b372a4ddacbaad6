/** Where something can be seen: a figure of a chapter with its sliders set. */
export interface Sight {
  readonly chapter: string;
  readonly figure: string;
  /** Values as in a link to a figure: in the metric unit shown, or `least` or `most`. */
  readonly state: Readonly<Record<string, string>>;
}

/** Address of a figure, its sliders set. */
export const addressOf = ({ chapter, figure, state }: Sight): string =>
  `${chapter}.html#${figure}?${new URLSearchParams(state)}`;
