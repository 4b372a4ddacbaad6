import { parseHTML } from "linkedom";
import { expect, it } from "vitest";
import { dot, label, line } from "../../../site/cells/marks.js";
import { paint } from "../../../site/cells/paint.js";

const frame = { width: 200, x: (value: number) => 10 * value, y: (value: number) => 100 - value };

it("keeps the elements it has drawn and touches only what differs", () => {
  const { document } = parseHTML("<svg><g id='clipped'></g><g id='free'></g></svg>");
  const [clipped, free] = [document.getElementById("clipped"), document.getElementById("free")];
  if (!clipped || !free) throw new Error("no layers");
  const layers = { clipped, free } as unknown as { clipped: Element; free: Element };
  const at = (height: number) => [
    line(
      [
        [0, 0],
        [1, height],
      ],
      "front",
    ),
    dot([1, height], "front"),
  ];
  paint(layers, at(10), frame);
  const [path, disc] = [clipped.children[0], free.children[0]];
  paint(layers, at(20), frame);
  expect(clipped.children[0]).toBe(path);
  expect(free.children[0]).toBe(disc);
  expect(path?.getAttribute("d")).toBe("M0 100l10-20");
  paint(layers, [label([1, 1], "words")], frame);
  expect(clipped.children.length).toBe(0);
  expect(free.innerHTML).toMatch(/^<text [^>]*>words<\/text>$/);
});
