import { requireInRange } from "../check.js";
import type { Axle, AxleGeometry, Car, PlacedMass } from "./car.js";

/**
 * The car with its body lower by the same amount at all four corners, as by shorter springs or
 * seats wound down: wheels stay, everything on the springs comes down, and roll centre, camber, toe
 * and travel follow.
 *
 * @param by - m; below zero raises the body
 * @throws Refusal when the body would touch the ground
 * @example
 * loweredCar(demoCar, 0.02).front.rideHeight // → 0.11, by hand: 0.13 − 0.02
 */
export function loweredCar(car: Car, by: number): Car {
  const most = Math.min(car.front.rideHeight, car.rear.rideHeight);
  requireInRange("lowering", by, -1, most, "m");
  const lower = (part: PlacedMass) => ({ ...part, height: part.height - by });
  return {
    ...car,
    body: lower(car.body),
    ...(car.driver && { driver: lower(car.driver) }),
    ...(car.passenger && { passenger: lower(car.passenger) }),
    ...(car.fuel && { fuel: lower(car.fuel) }),
    ...(car.ballast && { ballast: lower(car.ballast) }),
    front: loweredAxle(car.front, by),
    rear: loweredAxle(car.rear, by),
  };
}

/** To the links, a lower body is a wheel that has moved up. */
function loweredAxle(axle: Axle, by: number): Axle {
  const { camberGain = 0, toeGain = 0 } = axle.geometry;
  return {
    ...axle,
    rideHeight: axle.rideHeight - by,
    geometry: loweredGeometry(axle.geometry, by),
    camber: {
      left: axle.camber.left + camberGain * by,
      right: axle.camber.right + camberGain * by,
    },
    toe: { left: axle.toe.left + toeGain * by, right: axle.toe.right + toeGain * by },
  };
}

function loweredGeometry(geometry: AxleGeometry, by: number): AxleGeometry {
  const { rollCentreHeight, rollCentreMigration = 0, bumpTravel, droopTravel } = geometry;
  return {
    ...geometry,
    rollCentreHeight: rollCentreHeight + rollCentreMigration * by,
    ...(bumpTravel !== undefined && { bumpTravel: Math.max(0, bumpTravel - by) }),
    ...(droopTravel !== undefined && { droopTravel: droopTravel + by }),
  };
}
