import { parameters } from "../../parameters.js";
import {
  type ClassRule,
  ofWholeCar,
  type RangeKind,
  type RuledLever,
  rangeKinds,
} from "../class-rules.js";
import { OWN_TYRE, tyreNames } from "../tyres.js";
import {
  defined,
  type GroupShape,
  group,
  list,
  number,
  optional,
  type ShapeOf,
  type TextShape,
  text,
} from "./shape.js";
import { tyreShape } from "./tyre-file.js";

const ruledLevers: readonly RuledLever[] = [
  ...(["springRate", "barPosition", "seatTurns", "tyrePressure", "camber", "toe"] as const),
  ...(["rollCentreHeight", "damperBump", "damperRebound", "brakeFrontShare"] as const),
  ...(["driver", "passenger", "fuel", "ballast"] as const),
];

const head = (kind: string): { kind: TextShape; name: TextShape & { optional: true } } => ({
  kind: text("Which kind of rule", [kind]),
  name: optional(defined("rule-name", text("What the rule book calls it, such as 4.2"))),
});

const end = optional(defined("rule-end", text("At which axle; left out: both", ["front", "rear"])));

const range = (kind: RangeKind): GroupShape =>
  group(`${parameters[kind].name}: least, greatest or both`, {
    ...head(kind),
    ...(!ofWholeCar.includes(kind) && { end }),
    least: optional(number(kind, "Least")),
    greatest: optional(number(kind, "Greatest")),
  });

/** The rules of a class, in a class file and in a car that runs in it. */
export const rulesShape: ShapeOf<readonly ClassRule[]> = list(
  "The rules of the class",
  defined("class-rule", {
    type: "variant",
    about: "One rule",
    kinds: {
      ...Object.fromEntries(rangeKinds.map((kind) => [kind, range(kind)])),
      tyre: group("The control tyre", {
        ...head("tyre"),
        end,
        tyre: text("Which tyre; own: the one that the class brings along", [
          ...tyreNames,
          OWN_TYRE,
        ]),
        own: optional(defined("own-tyre", tyreShape)),
      }),
      fixed: group("What may not be moved", {
        ...head("fixed"),
        end,
        levers: list("Which adjusters", text("One of them", ruledLevers), ruledLevers.length),
      }),
    },
  }),
  100,
);
