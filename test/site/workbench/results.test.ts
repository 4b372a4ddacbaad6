import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { outputFrom, replyFrom } from "../../../site/workbench/model/results.js";

const line = { kind: "line", tone: "ink", label: "", name: "", weight: "fine", side: "right" };
const drawn = (marks: unknown) => JSON.stringify({ kind: "drawn", says: "", panels: [marks] });
const worked = { kind: "worked", id: "x", label: "x", value: 1, quantity: "force", decimals: 0 };

describe("what edited cells give back", () => {
  it("keeps the gaps of a curve, which JSON writes as null", () => {
    const reply = replyFrom(
      drawn([
        {
          ...line,
          points: [
            [0, 1],
            [1, Number.NaN],
          ],
        },
      ]),
    );
    expect(reply?.kind === "drawn" && reply.panels[0]?.[0]).toMatchObject({
      points: [
        [0, 1],
        [1, Number.NaN],
      ],
    });
  });

  it("is refused where a mark is not one of the course's", () => {
    for (const wrong of [
      { ...line, points: [["a", 1]] },
      { ...line, points: [[0, 1]], tone: "url(#x)" },
      { ...line, points: [[0, 1]], label: { toString: "x" } },
      { kind: "html", text: "<b>" },
      null,
    ])
      expect(replyFrom(drawn([wrong]))).toBeUndefined();
  });

  it("is data or nothing, whatever arrives", () => {
    const anything = fc.oneof(fc.anything(), fc.string(), fc.json());
    fc.assert(
      fc.property(anything, (said) => {
        const reply = replyFrom(said);
        if (reply) expect(["at", "ran", "drawn", "failed"]).toContain(reply.kind);
      }),
    );
    fc.assert(
      fc.property(fc.anything(), (given) => {
        expect(["string", "object"]).toContain(typeof outputFrom(given));
      }),
    );
  });

  it("is shown only where every part of it can be, else the part is named", () => {
    expect(outputFrom(worked)).toMatchObject(worked);
    expect(outputFrom({ ...worked, value: null })).toMatch(/^value: /);
    expect(outputFrom({ ...worked, quantity: "toString" })).toMatch(/^quantity: /);
    const figure = { kind: "figure", id: "x", title: "x", inputs: {} };
    const view = { x: [0, 1], y: [0, 1e9] };
    expect(outputFrom({ ...figure, panels: [{ view, label: "x" }] })).toMatch(/^panels/);
    expect(outputFrom({ kind: "script" })).toMatch(/^kind: /);
  });
});
