/** Title and opening of every section. */
export const sectionWords: Readonly<Record<string, { title: string; opening?: string }>> = {
  name: { title: "Name" },
  sizes: {
    title: "Sizes, with a tape measure",
    opening:
      "On level ground, tyres at driving pressure, with driver, fuel and whatever else you name below in the car.",
  },
  inside: {
    title: "Who and what is in it",
    opening:
      "As the car stood when it was measured and weighed. Distances to the nearest thumb’s breadth will do.",
  },
  weights: {
    title: "Weights, with four scales",
    opening:
      "Scales level with each other, tyres at driving pressure, driver in, one link of each bar unhooked; roll the car on and let it settle.",
  },
  springs: { title: "Springs" },
  bars: { title: "Anti-roll bars" },
  wheels: { title: "Tyres and alignment" },
  links: {
    title: "How the links guide the wheels",
    opening:
      "The least known numbers of most cars. Leave at first what you cannot measure, and look in chapter 4 at what they do.",
  },
  dampers: { title: "Dampers" },
  drive: { title: "Drive, brakes, steering, chassis, air" },
  limits: { title: "What your class allows", opening: "Leave empty what your rules do not say." },
  adjusters: {
    title: "What you can adjust, how far and how finely",
    opening:
      "Only what is ticked here is ever proposed as a change. Bars have their positions and need no entry.",
  },
};

/** What the tick of each optional part says. */
export const partWords: Readonly<Record<string, string>> = {
  driver: "A driver",
  passenger: "A passenger or instructor",
  fuel: "Fuel",
  ballast: "Ballast",
  "front.bar": "A bar at the front",
  "rear.bar": "A bar at the rear",
  "front.bar.tube": "Its size, for positions that give an arm length",
  "rear.bar.tube": "Its size, for positions that give an arm length",
  "front.differential": "A front differential whose kind is known; else taken as open",
  "rear.differential": "A rear differential whose kind is known; else taken as open",
  inertia: "Moments of inertia, measured; else they are estimated",
  air: "Forces of the air",
};
