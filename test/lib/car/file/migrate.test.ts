import { expect, test } from "vitest";
import { migrate } from "../../../../lib/car/file/migrate.js";

const invented = {
  1: ({ weight, ...rest }: Readonly<Record<string, unknown>>) => ({ ...rest, mass: weight }),
  2: (file: Readonly<Record<string, unknown>>) => ({ ...file, checked: true }),
};

test("a file two versions old takes both steps, and each is told", () => {
  expect(migrate({ version: 1, weight: 900, note: "kept" }, invented, 3)).toEqual({
    content: { mass: 900, note: "kept", checked: true },
    notes: [
      "The file was brought from version 1 to version 2.",
      "The file was brought from version 2 to version 3.",
    ],
  });
});

test("a file of today takes no step", () => {
  expect(migrate({ version: 3, mass: 900 }, invented, 3)).toEqual({
    content: { mass: 900 },
    notes: [],
  });
});

test("a file from the future is refused", () => {
  expect(migrate({ version: 4 }, invented, 3)).toEqual({
    fault: "version is 4 but must be a whole number from 1 to 3.",
  });
});
