import {
  defined,
  group,
  number,
  optional,
  type TextShape,
  text,
  type VariantShape,
} from "./shape.js";

const coordinate = () => number("pointCoordinate");

const point = (about: string) =>
  defined("point", group(about, { x: coordinate(), y: coordinate(), z: coordinate() }));

const wheel = {
  wheelCentre: point("Wheel centre"),
  camber: number("camber", "Camber where the points were measured"),
  toe: number("toe", "Toe where the points were measured"),
};

const lowerWishbone = {
  lowerFront: point("Front joint of the lower wishbone on the body"),
  lowerRear: point("Rear joint of the lower wishbone on the body"),
  lowerOuter: point("Joint of the lower wishbone on the upright"),
  toeInner: point("Joint of the toe link on the body or rack"),
  toeOuter: point("Joint of the toe link on the upright"),
};

const kind = (name: string): TextShape => text("Which kind", [name]);

const corner: VariantShape & { definition: string } = {
  definition: "corner",
  type: "variant",
  about: "One corner",
  kinds: {
    "double wishbone": group("Double wishbone", {
      kind: kind("double wishbone"),
      ...wheel,
      ...lowerWishbone,
      upperFront: point("Front joint of the upper wishbone on the body"),
      upperRear: point("Rear joint of the upper wishbone on the body"),
      upperOuter: point("Joint of the upper wishbone on the upright"),
    }),
    strut: group("Strut with a lower wishbone", {
      kind: kind("strut"),
      ...wheel,
      ...lowerWishbone,
      strutTop: point("Top mount of the strut on the body"),
      strutFoot: point("A point of the strut's axis on the upright"),
    }),
  },
};

const beamLink = (about: string) =>
  defined(
    "beamLink",
    group(about, { body: point("Joint on the body"), axle: point("Joint on the beam") }),
  );

/** The joints of an axle's links: independent corners, or a beam axle. */
export const linkageShape: VariantShape & { definition: string } = {
  definition: "linkage",
  type: "variant",
  about: "Joints of the links; the geometry follows from them",
  kinds: {
    independent: group("Independent wheels", {
      kind: kind("independent"),
      left: corner,
      right: optional(corner),
    }),
    "beam axle": group("Beam axle", {
      kind: kind("beam axle"),
      ...wheel,
      leftLink: beamLink("Left link along the car"),
      rightLink: beamLink("Right link along the car"),
      upperLink: beamLink("Upper link"),
      lateralRod: beamLink("Lateral rod"),
    }),
  },
};
