import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { measuringDrawings } from "../../../site/commands/measuring-docs.js";
import { specs, withoutForm } from "../../../site/pages/measure/model/spec.js";

// Out of date? Run: npm run measuring-docs
it("stand in docs as on the page, and each is shown in docs/measuring.md", () => {
  const page = readFileSync("docs/measuring.md", "utf8");
  const drawings = Object.entries(measuringDrawings());
  expect(drawings).toHaveLength(specs.length + withoutForm.length);
  for (const [file, text] of drawings) {
    expect(readFileSync(file, "utf8"), file).toBe(text);
    expect(page).toContain(`](${file.replace("docs/", "")})`);
  }
});
