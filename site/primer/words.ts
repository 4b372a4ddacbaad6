/** What the course in one file says of itself. */
export const words = {
  title: "How roll stiffness changes a car’s handling",
  forName: (name: string) => `For new members of ${name}`,
  forCar: (car: string) => `Figures and sums for ${car}.`,
  ofClass: (name: string) => `Class ${name}`,
  rules: "Its rules",
  against: (car: string) => `${car} against its rules`,
  chapter: (number: string) => `Chapter ${number}`,
  contents: "Contents",
  wordList: "Words",
  elsewhere: "(in the course, not in this file)",
  atCourse: "Predict it in the course",
  answersAtCourse: "Hints and answers open in the course",
  code: "A code that opens this prediction in the course",
  notices: "Notices of what others wrote",
  onPaper: (url: string) =>
    `Printed from the course: figures move and answers open on a screen${url && `, at ${url}`}.`,
  alone:
    "This file is the whole of it: it opens without network, prints on A4 or Letter, and its figures move where JavaScript is on.",
} as const;
