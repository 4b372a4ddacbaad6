import { ownScript } from "@rollbook/page";
import type { SearchData } from "./index-of.js";

const shared = globalThis as unknown as { rollbook: { searchData?: SearchData } };
let asked: Promise<SearchData> | undefined;

function load(): Promise<SearchData> {
  return new Promise((resolve, reject) => {
    const script = ownScript("search-index.js");
    script.addEventListener("load", () => {
      const { searchData } = shared.rollbook;
      if (searchData) resolve(searchData);
      else reject(new Error("the index is empty"));
    });
    script.addEventListener("error", () => reject(new Error("the index did not load")));
    document.head.append(script);
  });
}

/** The index, loaded when it is first asked for; a load that failed is tried again. */
export function searchData(): Promise<SearchData> {
  asked ??= load().catch((error) => {
    asked = undefined;
    throw error;
  });
  return asked;
}
