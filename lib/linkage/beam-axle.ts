import { requireInRange } from "../check.js";
import { type Carrier, link, wheel } from "./carrier.js";
import { requirePoint } from "./corner.js";
import type { Point } from "./space-vector.js";

/** Both joints of a link of a beam axle. */
export interface BeamLink {
  readonly body: Point;
  readonly axle: Point;
}

/**
 * A beam that carries both wheels, held by three links along the car and one across.
 *
 * Four links leave it free to heave and to roll, and nothing else. Leaf springs that guide the
 * beam are not covered.
 */
export interface BeamAxle {
  readonly kind: "beam axle";
  /** Centre of the left wheel; the right wheel is its mirror image. */
  readonly wheelCentre: Point;
  /** Camber of both wheels, rad, > 0 when the tops lean out. */
  readonly camber: number;
  /** Toe of each wheel, rad, > 0 when the fronts point in. */
  readonly toe: number;
  readonly leftLink: BeamLink;
  readonly rightLink: BeamLink;
  readonly upperLink: BeamLink;
  /** Lateral rod: its height sets the roll centre, its slope the side the body moves to. */
  readonly lateralRod: BeamLink;
}

/**
 * The carrier of a beam axle: four links and the ground under two wheels.
 *
 * @throws Refusal naming the point or angle out of range
 */
export function beamCarrier(beam: BeamAxle): Carrier {
  const { wheelCentre, camber, toe } = beam;
  requirePoint("wheelCentre", wheelCentre);
  requireInRange("wheelCentre z", wheelCentre.z, 0.1, 1, "m");
  requireInRange("camber", camber, -0.3, 0.3, "rad");
  requireInRange("toe", toe, -0.3, 0.3, "rad");
  const right = { ...wheelCentre, y: -wheelCentre.y };
  return {
    links: [
      beamLink("leftLink", beam.leftLink),
      beamLink("rightLink", beam.rightLink),
      beamLink("upperLink", beam.upperLink),
      beamLink("lateralRod", beam.lateralRod),
    ],
    sliders: [],
    wheels: [wheel(wheelCentre, camber, toe), wheel(right, camber, toe)],
  };
}

function beamLink(name: string, { body, axle }: BeamLink) {
  requirePoint(`${name} body`, body);
  requirePoint(`${name} axle`, axle);
  return link(body, axle);
}
