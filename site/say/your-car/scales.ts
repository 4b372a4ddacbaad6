/** What is said where scale readings are put in. */
export const scaleWords = {
  title: "Work the body out from four scale readings",
  reading: "Scale reading",
  use: "Put it in",
  incomplete:
    "Four readings are needed, and sound values for sizes, wheels and what is in the car.",
  off: (range: string) =>
    `That leaves the body outside its range, ${range}: see the readings, and what you say is in the car.`,
  done: (mass: string, front: string, left: string, cross: string) =>
    `Body put in. Together ${mass}, ${front} of it in front, ${left} on the left, cross weight ${cross}.`,
  cross:
    "The car file fits total, front and left share; it takes both axles to be equally one-sided when the seats are at zero, so a cross weight of your own belongs into the turns of the seats.",
} as const;
