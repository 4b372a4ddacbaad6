/** What the workshop says in more than one view. */
export const page = {
  title: "Workshop",
  description: "Plan, run and talk over a day on a car, on this device alone",
  opening:
    "For whoever leads a day on a car: plan it, print what is needed, run it, collect what drivers felt, lay it beside what the model says, and keep the log.",
  needs:
    "The workshop works with JavaScript, on this device, with or without a network. What you write stays in this browser until you save it as a file or forget it; nothing is sent anywhere, unless you join a day whose desk keeps it on its own laptop.",
  parts: "It has six parts",
  views: { plan: "Plan", sheets: "Sheets", run: "Run", report: "Report", talk: "Talk", log: "Log" },
  about: {
    plan: "Car, place, time and people; a sequence of single changes that can be felt, with minutes, warnings and what balance should do.",
    sheets:
      "Run sheet, change cards, slips, letters A–D, a hand-out, and an answer key on request, on A4 or Letter.",
    run: "The clock, the step at hand, votes with cards, notes for the instructor.",
    report:
      "What a driver felt: where, when, doing what, how much. For one thumb, in under two minutes.",
    talk: "What was felt beside what was predicted, and which single change to try next.",
    log: "Every set-up, run and report; files to take along, and files from other phones to take in.",
  },
  opensOn: "Opening what this device has …",
  noDay: "No day is open yet.",
  toPlan: "Open the example or start a day under Plan",
  sure: {
    working: "Working out how sure each change is …",
    progress: (count: number, of: number) =>
      `How sure each change is: from ${count} of ${of} sampled cars.`,
    help: "Cars differ from their files as far as a tape measure, scales and data sheets leave open. Sure: in 95 % or more of such cars the change goes that way; likely: in 75 % or more. No word where nothing moves.",
  },
  refused: (count: number) =>
    `This device refuses to keep ${count === 1 ? "what you wrote last" : `${count} entries`}: its store is full or closed. It is held until you close this page; save the log as a file now.`,
  minutes: (count: number) => `${count} min`,
  hours: (minutes: number) => {
    const whole = Math.round(minutes);
    const [hours, rest] = [Math.floor(whole / 60), whole % 60];
    const parts = [...(hours > 0 ? [`${hours}\u00a0h`] : []), `${rest}\u00a0min`];
    return (hours > 0 && rest === 0 ? parts.slice(0, 1) : parts).join(" ");
  },
  left: "left",
  right: "right",
  stages: {
    teach: "Teach",
    predict: "Predict",
    change: "Change",
    drive: "Drive",
    report: "Report",
    debrief: "Debrief",
    log: "Log",
  },
} as const;
