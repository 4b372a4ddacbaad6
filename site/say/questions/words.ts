import type { AnswersFileFault, GainOutcome, IdeaName } from "@rollbook/lib";

const questions = (count: number) => `${count} ${count === 1 ? "question" : "questions"}`;

function fileFault(fault: AnswersFileFault): string {
  switch (fault.code) {
    case "too-large":
      return "The file is too large to hold answers.";
    case "not-answers":
      return "The file does not hold answers to these questions.";
    case "other-version":
      return `The file is of version ${fault.version}, not ${fault.known}.`;
    case "no-list":
      return "The file holds no list of answers.";
    case "too-many":
      return `The file holds more than ${fault.most} answers.`;
  }
}

const days = (count: number) => (count === 1 ? "tomorrow" : `in ${count} days`);

/** Every word that the page of questions says of itself, apart from code so that it can be translated. */
export const words = {
  title: "Questions",
  description:
    "Fifteen things that many believe about load transfer, grip and set-up, asked about your own car and answered by the model.",
  lead: "Fifteen things that many people believe about load transfer, grip and set-up. Each comes with four answers; the right one is worked out for the car of this page, and every wrong one is told why it fails and where to see it fail.",
  withoutScript:
    "With JavaScript this page asks, keeps your answers on this device, and brings them back after 1, 3, 7 and 21 days. Without it, here are the questions for the workbook’s own car; decide on a letter before you unfold an answer.",
  parts: "Parts of this page",
  part: {
    before: "Before the course",
    one: "One question",
    review: "Review",
    after: "After the course",
    class: "With a class",
    file: "Your answers",
  },
  topics: {
    "stiffer-moves-more": "Stiff springs, no bars",
    "roll-moves-load": "A car that cannot lean",
    "grip-in-proportion": "Load and grip of one tyre",
    "soft-helps-both": "Softer springs at one end",
    "bar-helps-own-end": "A stiffer bar",
    "less-air-grips": "Letting air out, pumping up",
    "ballast-is-free": "Mass in a corner",
    "understeer-is-fixed": "Which end, in which part of a corner",
    "dampers-hold-load": "Dampers in the middle of a corner",
    "less-roll-less-transfer": "Lean and load",
    "less-dive-less-transfer": "Dive and squat",
    "always-more-to-move": "A wheel in the air",
    "more-camber-grips": "Camber",
    "roll-centre-removes": "Roll centres, up and down",
    "felt-so-it-worked": "Two changes at once",
  } as Partial<Record<IdeaName, string>>,

  // A question
  letters: "ABCD",
  yourAnswer: "Your answer",
  sure: "This is",
  confidences: ["a guess", "fairly sure", "certain"],
  answer: "Answer",
  theAnswer: "The answer, and why",
  right: "Right.",
  notSo: "Not so.",
  youSaid: (letter: string, confidence: string) => `You said ${letter}, ${confidence}.`,
  certainAndWrong: "You were certain: this is one to look at twice.",
  model: "The model’s answer is",
  seeIt: "See it move",
  others: "The other answers",
  onCar: (car: string) => `About ${car}.`,
  onOtherCar: (other: string, car: string, reason: string) =>
    `About ${other}, the workbook’s own car, and not ${car}: ${reason}`,
  notKept: "This device keeps nothing: your answers last until you leave the page.",
  next: "Next question",
  askTwin: "Ask its twin: the same idea, other numbers",
  askFirst: "Ask the first of the two",

  // The checks
  beforeIntro:
    "Before you read: fifteen questions, each with how sure you are. Nothing is explained yet, because the chapters ask you to predict first. The same ideas come again, with other numbers, when you are through.",
  afterIntro:
    "When you have read the chapters: fifteen twins of the questions before the course. What has become of each idea is shown at the end.",
  progress: (number: number, of: number) => `Question ${number} of ${of}`,
  beforeDone: (right: number, of: number) =>
    `${right} of ${of} answered as the model does. Which ones, and why, the chapters tell.`,
  chaptersFor: "Where your other answers are taken up:",
  chapter: (number: string) => `Chapter ${number}`,
  countOf: questions,
  afterDone: (right: number, of: number) => `${right} of ${of} answered as the model does.`,
  noBefore: "There is nothing to compare with: the check before the course has not been taken.",
  compared: (both: number, before: number, after: number) =>
    `Of ${both} asked both times: ${before} right before the course, ${after} after it.`,
  certain: (before: number, after: number) =>
    `Wrong and certain: ${before} before, ${after} after. That is the kind that one acts on.`,
  fewSay:
    "These are fifteen questions put to one person: enough to say what to look at again, too few for a percentage.",
  met: "its twin had been met before, so this says less",
  outcomes: {
    learned: "learned",
    known: "known before",
    lost: "lost on the way",
    "not yet": "not yet",
  } as Record<GainOutcome, string>,
  beforeWas: "Before",
  afterWas: "After",
  was: (right: boolean, confidence: string) => `${right ? "right" : "wrong"}, ${confidence}`,
  heldOn: (belief: string) => `What was held: “${belief}”`,
  lookAgain: "Look at it again",
  startAgain: "Start this check again",
  sureToStart: "Forget the answers of this check and start it again?",

  // One question, review
  oneIntro: "Choose what to be asked about.",
  topic: "Topic",
  reviewIntro:
    "An answer comes back after a day, then after 3, 7 and 21 days as long as it is right. A wrong one starts over.",
  due: (count: number) => `${questions(count)} due today.`,
  fromChapters: "From the chapters",
  toSolve: "Work these out once more:",
  recallIntro: "You predicted this and saw the answer. Say it to yourself before you look.",
  showIt: "Show what I saw",
  predicted: (said: string) => `You said: ${said}`,
  saw: (saw: string) => `You saw: ${saw}`,
  modelSaid: (model: string) => `The model said: ${model}`,
  atPlace: "The figure in its chapter",
  remembered: "I remembered it",
  forgot: "I had forgotten",
  nothingDue: "No question is due today.",
  nothingYet:
    "There is nothing to review yet. Any question that you answer here or at the top of a chapter comes back from tomorrow on.",
  comesBack: (count: number) => `It comes back ${days(count)}.`,
  allPassed: "It has passed all its reviews.",
  later: (count: number, wait: number) => `${questions(count)} ${days(wait)}`,
  passed: (count: number) => `${questions(count)} through all four reviews`,

  // With a class
  classIntro:
    "One question in large type. Everyone holds up a letter, you type the counts; between two votes neighbours convince each other. The page advises by the share that is right and keeps it to itself until you show the answer.",
  fill: "Fill the screen",
  print: "Print this sheet",
  vote: (number: number) => `Vote ${number}`,
  cards: (letter: string) => `Cards ${letter}`,
  count: "Count",
  badCount: "Each count is a whole number from 0, and at least one card must be up.",
  advice: "Advice",
  showAnswer: "Show the answer",
  votes: (counts: readonly string[]) => `Cards: ${counts.join(", then ")}`,
  rightOf: (right: number, of: number) => `${right} of ${of} right`,

  // Answers as a file
  kept: (count: number) =>
    count === 0
      ? "No answers are kept on this device."
      : `${count} ${count === 1 ? "answer is" : "answers are"} kept on this device, and nowhere else.`,
  save: "Save as a file",
  fileName: "questions-answers.json",
  read: "Add answers from a file",
  added: (count: number) => (count === 1 ? "1 answer added." : `${count} answers added.`),
  leftOut: (count: number) => ` ${count} of the file could not be read and were left out.`,
  fileFault,
  unreadable: "The file could not be read.",
  forget: "Forget all answers",
  sureToForget:
    "Forget all answers on this device? Save them as a file first if you may want them.",
  forgotten: "All answers are forgotten.",
  path: "Your path through the chapters",
  pathKept: (count: number) =>
    count === 0
      ? "Nothing was predicted or solved in the chapters on this device yet."
      : `What you predicted, saw and solved at ${count} ${count === 1 ? "place" : "places"} of the chapters is kept on this device, and nowhere else. As a file it comes along to another one.`,
  pathSave: "Save my path as a file",
  pathFileName: "rollbook-path.json",
  pathRead: "Add a path from a file",
  pathAdded: (count: number) =>
    `${count} ${count === 1 ? "place" : "places"} of the file taken in; what you wrote here stays as it is.`,
  pathFault: {
    "too-large": "The file is too large to hold a path.",
    "not-a-path": "The file does not hold a path through this course.",
    "other-version": "The file is of another version of the course.",
  },
  group: "Count a group",
  groupIntro:
    "Choose the files of several members. They are counted here, in this page, by topic, over those who took both checks; no names, nothing is kept.",
  groupFiles: "Files of members",
  groupOf: (files: number, both: number) =>
    `${files} ${files === 1 ? "file" : "files"} read; ${both} took both checks in at least one topic.`,
  groupRow: (topic: string, before: number, after: number, of: number) =>
    `${topic}: ${before} of ${of} right before, ${after} of ${of} after`,
  groupNobody: (topic: string) => `${topic}: nobody both times`,

  // At the top of a chapter
  warmUpIntro: "From earlier chapters, about the car of this page. They come back in the review.",
  allQuestions: "All questions",
  checkIntro: "Of this chapter, about the car of this page. They come back in the review.",
  checkDone: "You have answered all that this chapter asks today.",
  warmUpDone: "You have been asked all that earlier chapters hold for today.",
} as const;
