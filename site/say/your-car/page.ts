/** What the page says of itself, with and without a script. */
export const pageWords = {
  title: "Your car",
  description:
    "Enter your own car from tape measure, scales and data sheets, and the whole course is about it",
  lead: "Every figure, number and exercise of the course can be worked out for your car. Start from a copy of the workbook’s own, put in what you can measure, and leave the rest: the page says which values are still the copy’s. Any unit will do if you type it with the number, such as 94.5 in, 2400 mm or 29 psi.",
  onDevice:
    "What you type stays on this device. Save a car as a file to take it elsewhere or to hand it on.",
  caution:
    "Motion ratios and travels are measured with a wheel off the ground and a spring out of the way. Firm level ground, wheels chocked, the car on stands made for its weight, never on a jack alone; follow the maker’s manual, and have a workshop do what you are not sure of.",
  measureLink: "A first car in ten minutes, and measuring with tape, scales and a stopwatch",
  cautionHead: "Caution.",
  withoutScript:
    "To enter and keep a car, this page needs JavaScript. Below is what it asks for and how to measure it, to take along to the car.",
  measure: "What to measure, and how",
  leftOut: "may be left out",
} as const;
