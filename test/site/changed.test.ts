import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { inRoot } from "../../site/build/paths.js";
import { choose } from "../../site/commands/changed/choose.js";
import { importsOf } from "../../site/commands/changed/graph.js";
import { pagesOf, scriptOf } from "../../site/commands/changed/pages-of.js";
import { covers } from "./browser/covers.js";

describe("what a change concerns", () => {
  it("is found by imports, through a file that gathers others only where a name is used", async () => {
    const [bar, rates] = ["test/lib/spring/bar.test.ts", "test/lib/spring/rates.test.ts"];
    const graph = await importsOf([bar, "test/site/browser/your-car.test.ts"]);
    expect(graph.get(bar)?.get("lib/spring/bar.ts")).toBe(1);
    expect(graph.get(bar)?.has("lib/map/set-up-map.ts")).toBe(false);
    expect(graph.has(rates)).toBe(false);
    const throughIndex = graph.get("test/site/browser/your-car.test.ts");
    expect(throughIndex?.has("lib/load/transfer.ts")).toBe(true);
    expect(throughIndex?.has("lib/day/diagnosis/diagnose.ts")).toBe(false);
  });

  it("shows in the page of its folder, in a chapter of its notebook, and in pages that run it", () => {
    const pages = ["your-car", "map", "01-load"];
    const graph = new Map([[scriptOf("map"), new Map([["lib/map/knots.ts", 2]])]]);
    const shown = (file: string) => [...pagesOf([file], graph, pages)];
    expect(shown("site/pages/your-car/view/cars.ts")).toEqual([["your-car", 0]]);
    expect(shown("notebooks/01-load.ipynb")).toEqual([["01-load", 0]]);
    expect(shown("lib/map/knots.ts")).toEqual([["map", 3]]);
    expect(shown("site/styles/course.css").map(([page]) => page)).toEqual(pages);
    expect(shown("docs/model.md")).toEqual([]);
  });
});

describe("tests for a change", () => {
  const near = { file: "test/lib/a.test.ts", distance: 0, seconds: 4 };
  const far = { file: "test/lib/b.test.ts", distance: 5, seconds: 1 };
  const long = { file: "test/lib/c.test.ts", distance: 1, seconds: 100 };

  it("are the nearest first, those that fit into the time, and the rest is told", () => {
    expect(choose([far, long, near], 40)).toEqual({ chosen: [near, far], left: [long] });
  });

  it("leave time for building the course where one of them looks at it", () => {
    const page = { file: "test/site/browser/map.test.ts", distance: 2, seconds: 50 };
    expect(choose([page], 40).left).toEqual([page]);
    expect(choose([{ ...page, file: near.file }], 40).chosen).toHaveLength(1);
  });
});

it("every test file in a browser says which pages it looks at, and no other does", () => {
  const files = readdirSync(inRoot("test/site/browser")).filter((file) =>
    file.endsWith(".test.ts"),
  );
  expect(Object.keys(covers).sort()).toEqual(files.sort());
  const pages = [
    ...["index", "every page", "every chapter"],
    ...readdirSync(inRoot("site/pages")),
    ...readdirSync(inRoot("notebooks")).map((file) => file.replace(/\.ipynb$/, "")),
  ];
  const named = Object.values(covers).flat();
  expect(named.filter((page) => !pages.includes(page.replace(/\.code$/, "")))).toEqual([]);
});
