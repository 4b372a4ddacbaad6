/** What is said where a first car is made in ten minutes. */
export const firstWords = {
  title: "Ten minutes to a first car",
  lead: "Ten things that anybody can read or measure. Everything else is taken as such cars usually have it, marked as estimated, each number with how far it may be off (common practice, no source): the course then says what it can tell of such a car and what it cannot.",
  make: "Make this car",
  still: (names: readonly string[]) => `Still to come: ${names.join(", ")}.`,
  made: (car: string, numbers: number) =>
    `${car} is made, and the course shows it. ${numbers} of its numbers are estimates. What the course can tell of it, and what to measure next, is being worked out at the end of this page.`,
  taken: (car: string) => `There is a ${car} already: give this one another name.`,
  cannot: (fault: string) => `No car can be made of that: ${fault}`,
  notKept: "This device kept nothing: it is full, or lets no page keep anything.",
  gone: (car: string) => `${car} is gone again.`,
  tyreFault: "A size as it stands on the tyre’s side, such as 195/50 R 15.",
  fields: {
    name: "What the car is called",
    mass: "mass, driver and fuel in it",
    frontMass: "of that on the front axle",
    wheelbase: "wheelbase",
    tyre: "Tyre size, as on its side",
    track: "track",
    pressure: "pressure, warm",
    rideHeight: "ride height",
    bar: "bar across, blank for none",
    driven: "Driven wheels",
    seat: "The driver sits",
    frontKind: "Front axle",
    rearKind: "Rear axle",
  },
  choices: {
    rear: "rear",
    front: "front",
    all: "all",
    left: "on the left",
    right: "on the right",
    middle: "in the middle",
    independent: "wheels by themselves",
    beam: "a beam carries both",
  },
} as const;

/** How a field of a first car is called, of which axle where it has one. */
export function firstField(key: string): string {
  const [one = "", other] = key.split(".");
  const fields: Readonly<Record<string, string>> = firstWords.fields;
  return other === undefined ? (fields[one] ?? one) : `${one} ${fields[other] ?? other}`;
}
