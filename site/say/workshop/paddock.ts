/** What is said where a desk keeps the day for all phones. */
export const paddock = {
  view: "Desk",
  noPaddock:
    "No desk keeps a day at this address. Whoever leads the day starts one with npm run paddock and shows the code.",
  join: {
    title: "Join the day",
    code: "Code of the day",
    codeHelp: "six letters, on the wall or beside the code picture",
    look: "Go on",
    who: "Tap your name",
    other: "Or write it",
    go: "Join",
    nameFault: "A name is needed, of 80 letters at most.",
    as: (name: string) => `You are in as ${name}.`,
    stays:
      "Your name and what you write go to the desk’s laptop and stay there and on this phone; they go nowhere else.",
    network:
      "The desk’s network may have no internet. If your phone asks, stay in it: some leave such a network by themselves.",
    plain:
      "Over plain http this page cannot keep the screen on, use the camera or sensors, or copy by itself. Leave it open: once closed it opens again only in reach of the desk.",
    secure: "Leave this page open: once closed it may open again only in reach of the desk.",
  },
  state: {
    in: (name: string) => `At the desk as ${name}.`,
    desk: "This is the desk: what phones file comes in here.",
    out: "This phone is no longer in the day; join again, or ask at the desk. What you wrote is still here.",
    draft:
      "The plan on this device has changes that are not filed: phones and other desks follow the plan as it was filed last (Plan, at its end).",
    away: "Out of reach of the desk: it goes on trying.",
    fault: "The desk’s machine does not take it now.",
    waiting: (count: number) =>
      `${count === 1 ? "One entry waits" : `${count} entries wait`} here and ${count === 1 ? "goes out by itself" : "go out by themselves"}.`,
    aside: (count: number) =>
      `The desk’s program fails on ${count === 1 ? "one entry" : `${count} entries`}: kept here and tried again now and then, while all others go on. Hand it over by code or file when you are done.`,
    refused: (count: number) =>
      `The desk does not take ${count === 1 ? "one entry" : `${count} entries`}: ask there.`,
    another:
      "If the desk came back under another address, open that one, and hand over from here by code or file.",
  },
  filed: "Filed at the desk. Another place of the same run?",
  waits: "It waits here and goes to the desk by itself. Another place of the same run?",
  atDesk: "at the desk",
  waitsHere: "waits here",
  hand: {
    title: (run: number, runs: number) => `Run ${run} of ${runs}`,
    changed: (car: number | undefined, what: string) =>
      car === undefined ? `On the car: ${what}.` : `On car ${car}: ${what}.`,
    baseline: "nothing, it is the car as it is",
    back: "back to the baseline",
    nothing: "nothing is changed, and everybody knows",
    drive: (car: number, round: number, of: number) =>
      `You drive car ${car}${of > 1 ? `, in round ${round} of ${of}` : ""}.`,
    in: (minutes: number) => `In about ${minutes} min.`,
    now: "Your round is out now.",
    watch: "You do not drive in this run: watch a corner, write, or hold the clock.",
    stage: (stage: string) => `Now: ${stage}.`,
    predict: "Say first what you expect of it, below.",
    report: "When you come in: report below, before anybody speaks of lap times.",
    go: (run: number) => `Go to run ${run}`,
    none: "The desk has not filed a plan yet.",
  },
  desk: {
    title: "Desk",
    secret: "The desk’s secret",
    secretHelp: "in the terminal where the paddock was started",
    secretFault: "That is not the desk’s secret.",
    go: "This is the desk",
    joinNetwork: (name: string) => `1. Join the network ${name}`,
    handOver:
      "What you file goes to the desk by itself. Should the desk not come back: save it as a file, copy it as text, or show it as a code.",
    joinDay: "2. Join the day",
    joinOnly: "Join the day",
    orType: (address: string, code: string) => `or type ${address}/join and the code ${code}`,
    phones: (count: number) => `Phones (${count})`,
    none: "No phone has joined yet.",
    missing: (names: string) => `Not joined yet: ${names}.`,
    allIn: "Every driver of the day has joined.",
    rename: "Rename",
    renameTo: (name: string) => `New name of ${name}`,
    remove: "Remove",
    removed: (name: string) => `${name} was removed; what was filed stays.`,
    renamed: (name: string) => `The phone is now ${name}.`,
    leave: "This is not the desk any more",
    wall: "Show the codes on the wall",
    failed: "The desk’s machine did not answer; try again.",
  },
} as const;
