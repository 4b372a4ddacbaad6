import { carFromJson, firstCar, orUndefined } from "@rollbook/lib";
import { type Cars, ownCars, reader } from "@rollbook/page";
import { firstWords as words } from "../../../say/measure/first-car.js";
import { drafts } from "../../../store/car-drafts.js";
import { firstCarTyped } from "../../../store/first-car-typed.js";
import { say } from "../../../ui/notice.js";
import { begin } from "../next/state.js";
import { givenFrom } from "./given.js";

/** Takes what was typed in a field. */
export async function typeFirst(key: string, text: string): Promise<void> {
  const { [key]: _, ...others } = firstCarTyped.now.value;
  const typed = text === "" ? others : { ...others, [key]: { text, units: reader.units } };
  if (!(await firstCarTyped.setTyped(typed))) say(words.notKept);
}

const isTaken = (name: string): boolean =>
  [...ownCars.now.value.cars, ...drafts.now.value.map(({ base }) => base)].some(
    (one) => one.name === name,
  );

/** Makes the car, lets the course show it, and offers the way back. */
export async function makeFirstCar(): Promise<void> {
  const read = givenFrom(firstCarTyped.now.value);
  if ("missing" in read) return;
  const { given } = read;
  if (isTaken(given.name)) return say(words.taken(given.name));
  const content = orUndefined(() => firstCar(given));
  const { car, faults } = { faults: undefined, ...carFromJson(content) };
  if (car === undefined) return say(words.cannot(faults?.[0] ?? ""));
  const before: Cars = ownCars.now.value;
  const held = await ownCars.set({ cars: [...before.cars, car], current: car.name });
  if (!held) return say(words.notKept);
  const estimated = Object.values(car.known ?? {}).filter(({ how }) => how === "estimated").length;
  say(words.made(car.name, estimated), () => void takeBack(car.name, before.current));
  begin();
}

async function takeBack(name: string, shown: string | undefined): Promise<void> {
  const cars = ownCars.now.value.cars.filter((car) => car.name !== name);
  const current = cars.find((car) => car.name === shown)?.name;
  const held = await ownCars.set(current === undefined ? { cars } : { cars, current });
  say(held ? words.gone(name) : words.notKept);
}
