import { type Car, demoCar } from "@rollbook/lib";

/** The car that the chapter is about: in a notebook, the demo car. */
export function currentCar(): Car {
  return demoCar;
}
