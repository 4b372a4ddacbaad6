import type { Conflict, LooseEnd } from "@rollbook/lib";

/** One id under which different things were written. */
export const conflictInWords = ({ id, entries }: Conflict): string =>
  `${entries.length} different entries are called ${id}: all are kept; withdraw or replace those that are not meant.`;

/** What an entry refers to and the log does not have. */
export const looseEndInWords = ({ from, to }: LooseEnd): string =>
  `${from} refers to ${to}, which is not in this log: merge its device too.`;
