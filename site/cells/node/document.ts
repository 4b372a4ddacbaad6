import { parseHTML } from "linkedom";

/** The document that the kernel draws into. */
export const { document } = parseHTML("<!doctype html><html><body></body></html>");
