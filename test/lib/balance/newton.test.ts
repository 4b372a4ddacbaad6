import { expect, test } from "vitest";
import { newton } from "../../../lib/balance/newton.js";

test("two circles meet where the arithmetic says", () => {
  // x² + y² = 25 and (x − 6)² + y² = 25 meet at x = 3, y = ±4, by hand
  const residuals = ([x = 0, y = 0]: readonly number[]) => [
    x * x + y * y - 25,
    (x - 6) ** 2 + y * y - 25,
  ];
  const [x, y] = newton(residuals, [1, 1], [1e-7, 1e-7]) ?? [];
  expect(x).toBeCloseTo(3, 9);
  expect(y).toBeCloseTo(4, 9);
});

test("equations without an answer give nothing", () => {
  expect(newton(([x = 0]) => [x * x + 1], [3], [1e-7])).toBeUndefined();
});
