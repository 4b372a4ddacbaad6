const counted = (count: number, one: string, more: string): string =>
  count === 0 ? "" : `${count} ${count === 1 ? one : more}`;

/** Every word of the picture on the first page. */
export const words = {
  question:
    "You make only the front of this car stiffer in roll. Which end of the car pays for it?",
  choose: { front: "The front", rear: "The rear", neither: "Neither: it only leans less" },
  chosen: (what: string) =>
    `You say: ${what}. Drag the first slider to the right and read what it says.`,
  path: "Ten ideas, one path",
  doors: "What brings you here?",
  forMe: "Make this my menu",
  notForMe: "Back to the whole menu",
  goOn: "Go on here",
  done: (
    filed: readonly [number, number],
    seen: readonly [number, number],
    solved: readonly [number, number],
  ) =>
    [
      filed[0] > 0 && `${filed[0]} of ${filed[1]} predicted`,
      seen[0] > 0 && `${seen[0]} of ${seen[1]} seen`,
      solved[0] > 0 && `${solved[0]} of ${solved[1]} solved`,
    ]
      .filter(Boolean)
      .join(" · "),
  due: (predictions: number, exercises: number, questions: number) =>
    `Due today: ${[
      counted(predictions, "prediction to recall", "predictions to recall"),
      counted(exercises, "exercise", "exercises"),
      counted(questions, "question", "questions"),
    ]
      .filter((part) => part !== "")
      .join(", ")}. `,
  review: "Review",
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
