import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { DEGREE } from "../../../lib/index.js";
import { packed, unpacked } from "../../../site/pages/ride/work/packed.js";
import { guessed, headsOf, rideFrom, tableOf } from "../../../site/pages/ride/work/table.js";

const number = fc.integer({ min: -20_000_000, max: 20_000_000 }).map((one) => one / 1e6);
const three = fc.tuple(number, number, number);
const anyRide = fc
  .tuple(
    fc.array(fc.tuple(three, three), { minLength: 1, maxLength: 30 }),
    fc.array(fc.tuple(fc.integer({ min: 0, max: 100 }), fc.option(number, { nil: undefined })), {
      maxLength: 5,
    }),
  )
  .map(([felt, fixes]) => ({
    felt: felt.map(([force, turn], i) => ({ time: i / 50, force, turn })),
    fixes: fixes.map(([speed, course], i) => ({
      ...{ time: i + 0.25, speed },
      ...(course !== undefined && { course }),
    })),
  }));

describe("a ride as a table", () => {
  test("comes back from it as it was, to the sixth digit, columns and units by their names", () => {
    fc.assert(
      fc.property(anyRide, (ride) => {
        const text = tableOf(ride);
        expect(rideFrom(text, guessed(headsOf(text)))).toEqual(ride);
      }),
    );
  });

  test("and so do its rows of numbers", () => {
    fc.assert(
      fc.property(anyRide, (ride) => {
        expect(unpacked(packed(ride))).toEqual(ride);
      }),
    );
  });

  const foreign =
    "Time (ms);Acc X (g);Acc Y (g);Acc Z (g);Gyro X (deg/s);Gyro Y (deg/s);Gyro Z (deg/s);Speed (km/h)\n" +
    "0;0,1;0;1;0;0;90;36\n20;0,1;0;1;0;0;90;\n";

  test("of another program is read in its units, with decimal commas", () => {
    const ride = rideFrom(foreign, guessed(headsOf(foreign)));
    expect(ride.felt[1]?.time).toBeCloseTo(0.02, 12);
    expect(ride.felt[0]?.force[0]).toBeCloseTo(0.980665, 9);
    expect(ride.felt[0]?.turn[2]).toBeCloseTo(90 * DEGREE, 12);
    expect(ride.fixes).toEqual([{ time: 0, speed: 10 }]);
  });

  test("is refused in a sentence for a column that is missing, and for what is no number", () => {
    const { columns, units } = guessed(headsOf(foreign));
    const { turnZ: _, ...others } = columns;
    expect(() => rideFrom(foreign, { columns: others, units })).toThrow(
      "A column for turn z is needed.",
    );
    const broken = foreign.replace("20;0,1", "20;abc");
    expect(() => rideFrom(broken, { columns, units })).toThrow(
      "Line 3: force x is “abc” but must be a number.",
    );
    expect(() => rideFrom(foreign.replace("\n20", "\n"), { columns, units })).toThrow(
      "Line 3 has no time.",
    );
  });
});
