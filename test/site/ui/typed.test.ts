import { describe, expect, it } from "vitest";
import { type Typed, type TypedIn, takeTyped, typedFor } from "../../../site/ui/typed.js";

/** A field for a number from 0 to 10 that is typed letter by letter. */
function field(value: number) {
  let typed: Typed<number> | undefined;
  const typedIn: TypedIn<number> = {
    now: () => typed,
    keep: (one) => {
      typed = one;
    },
  };
  return {
    value: () => value,
    shown: () => typedFor(typedIn, value),
    type(text: string) {
      const read = Number(text);
      const usable = text !== "" && read <= 10 ? read : undefined;
      takeTyped(text, usable, value, typedIn, (taken) => {
        value = taken;
      });
    },
    setElsewhere(other: number) {
      value = other;
    },
  };
}

describe("a field that is being typed in", () => {
  it("reports each text that can be used, and shows it as it was typed", () => {
    const minutes = field(3);
    minutes.type("7.0");
    expect([minutes.value(), minutes.shown()]).toEqual([7, "7.0"]);
  });

  it("leaves the value what it was before where the text ends up as none", () => {
    const minutes = field(3);
    for (const text of ["", "9", "99"]) minutes.type(text);
    expect([minutes.value(), minutes.shown()]).toEqual([3, "99"]); // not 9, which nobody meant
  });

  it("shows the value again once it was set in another place", () => {
    const minutes = field(3);
    minutes.type("99");
    minutes.setElsewhere(5);
    expect(minutes.shown()).toBeUndefined();
    minutes.type("55");
    expect(minutes.value()).toBe(5);
  });
});
