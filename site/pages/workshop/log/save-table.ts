import { saveFile } from "@rollbook/page";

/** Saves a table as a file; the mark in front tells spreadsheets that it is UTF-8. */
export const saveTable = (name: string, table: string): void =>
  saveFile(name, `\uFEFF${table}`, "text/csv");
