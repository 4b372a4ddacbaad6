/** A figure of a chapter with its sliders set. */
export interface FigureState {
  readonly chapter: string;
  readonly figure: string;
  /** Values as in a link to a figure: in the metric unit shown, or `least` or `most`. */
  readonly state: Readonly<Record<string, string>>;
}

/** Its address. */
export const addressOf = ({ chapter, figure, state }: FigureState): string =>
  `${chapter}.html#${figure}?${new URLSearchParams(state)}`;
