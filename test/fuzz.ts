import fc from "fast-check";

/** How many broken inputs a reader is tried on: more in the long run. */
export const FUZZ_RUNS = Number(process.env.FUZZ_RUNS ?? 1_000);

/** A text with some of its parts cut, doubled, moved or written over. */
export function hurt(text: string): fc.Arbitrary<string> {
  const place = fc.integer({ min: 0, max: text.length });
  const put = fc.oneof(
    fc.string({ maxLength: 4 }),
    fc.constantFrom("null", "{}", "[]", '"', "}", ",", "-1", "1e999", "\\u0000", "__proto__"),
    fc.tuple(place, place).map(([from, to]) => text.slice(from, Math.min(to, from + 200))),
  );
  const blow = fc.record({ at: place, length: fc.integer({ min: 0, max: 60 }), put });
  return fc
    .array(blow, { minLength: 1, maxLength: 3 })
    .map((blows) =>
      blows.reduce(
        (now, { at, length, put }) => now.slice(0, at) + put + now.slice(at + length),
        text,
      ),
    );
}

/** Anything that JSON can hold, what no reader expects more often than chance has it. */
export const junk: fc.Arbitrary<unknown> = fc.oneof(
  fc.jsonValue(),
  fc.double(),
  fc.constantFrom<unknown>(null, true, -1, 0, 1e300, "", "1", [], {}, [null], [[]]),
);
