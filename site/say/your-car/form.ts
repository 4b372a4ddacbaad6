/** What the form says around its fields. */
export const formWords = {
  save: "Save",
  saveAndShow: "Save, and let the course show it",
  discard: "Drop these changes",
  draftKept: "Kept on this device as you type.",
  faults: (count: number) =>
    count === 1 ? "One value needs a look" : `${count} values need a look`,
  asDemo: (count: number, car: string) =>
    count === 1 ? `1 value still the ${car}’s` : `${count} values still the ${car}’s`,
  stillDemo: (car: string) => `${car}’s`,
  confirm: "These are my car’s values too",
  how: "How?",
  howNamed: (name: string) => `How? ${name}`,
  addPosition: "One position more",
  dropPosition: (number: number) => `Take out position ${number}`,
  linked: (end: string) =>
    `The file of this car has the joints of its ${end} links. Roll centre, camber and toe change and the roll steer of a beam follow from them and cannot be typed.`,
  unlink: (end: string) => `Take the ${end} joints out and type the numbers`,
} as const;
