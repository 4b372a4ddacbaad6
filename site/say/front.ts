/** Every word of the picture on the first page. */
export const words = {
  title: "Turn left, seen from behind",
  stiffness: "Roll stiffness of the front, of what it is",
  time: "Time",
  end: (end: "front" | "rear") => `${end} axle`,
  axle: (end: "front" | "rear") =>
    `The ${end} axle from behind, seen through the body as the car turns in to the left: the body leans to the right, arrows are the loads of the two tyres, and three roads are as wide as what links, dampers and springs move across; angles are drawn three times`,
  asItIs: (front: string, rear: string) =>
    `As it is, the outside front tyre ends up with ${front}, the outside rear one with ${rear}. Make the front stiffer in roll: which of the two pays?`,
  changed: (
    stiffer: boolean,
    load: Readonly<Record<"front" | "frontBefore" | "rear" | "rearBefore", string>>,
    sooner: "front" | "rear",
  ) =>
    `A ${stiffer ? "stiffer" : "softer"} front leans ${stiffer ? "less" : "more"}, and takes ${stiffer ? "more" : "less"} of what crosses the car: its outside tyre ends up with ${load.front} (${load.frontBefore} before), the rear one with ${load.rear} (${load.rearBefore} before). A tyre with twice the load does not grip twice as well${(sooner === "front") === stiffer ? `, so with all four wheels counted the ${sooner} gives up sooner than before` : `; on this car other things outweigh that, and with all four wheels counted the ${sooner} gives up sooner than before`}. That is what this workbook is about.`,
} as const;
