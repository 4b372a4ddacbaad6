import type { CarSheet, SheetRow } from "@rollbook/lib";
import type { ComponentChildren } from "preact";
import type { Draft } from "../day/draft.js";
import { words } from "../words.js";

/** What a sheet is made of: the day, and its runs worked out. */
export interface OfDay {
  readonly day: Draft;
  readonly rows: readonly SheetRow[];
  /** The runs of each car of the plan. */
  readonly sheets: readonly CarSheet[];
}

/** A run of one car of the plan. */
export interface CarRun {
  readonly car: number;
  readonly row: SheetRow;
}

/** What each car of the plan does in a run. */
export const carsIn = (sheets: readonly CarSheet[], run: number): CarRun[] =>
  sheets.flatMap(({ car, rows }) => {
    const row = rows[run - 1];
    return row === undefined ? [] : [{ car, row }];
  });

/** A sheet of paper with a title; what lies on it may go on over several pages. */
export function Paper({
  day,
  title,
  secret = false,
  children,
}: Pick<OfDay, "day"> & {
  readonly title: string;
  /** For nobody but the instructor. */
  readonly secret?: boolean;
  readonly children: ComponentChildren;
}) {
  return (
    <article class={secret ? "paper secret" : "paper"}>
      <h3>{title}</h3>
      {children}
      <footer>{words.sheets.footer(day.name, day.venue.name)}</footer>
    </article>
  );
}

/** A line to write on; what is known already stands in its place. */
export function Blank({
  label,
  filled,
  kind = "",
}: {
  readonly label: string;
  readonly filled?: string | undefined;
  readonly kind?: string;
}) {
  if (filled !== undefined)
    return (
      <p class="filled">
        {label} <b>{filled}</b>
      </p>
    );
  return (
    <p class={`blank ${kind}`}>
      <span>{label}</span>
    </p>
  );
}

/** Words to mark with a pen. */
export function ToMark({
  label,
  choices,
}: {
  readonly label: string;
  readonly choices: readonly string[];
}) {
  return (
    <p class="to-mark">
      <b>{label}</b>
      {choices.map((choice) => (
        <span key={choice}>{choice}</span>
      ))}
    </p>
  );
}
