import type { SitePage } from "../build/site-pages.js";

/** The pages beside the chapters. */
export const pages: readonly SitePage[] = [];
