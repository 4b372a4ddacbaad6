/** What is said where a tyre of one's own is taken in. */
export const tyreWords = {
  title: "A tyre that was measured",
  help: "Paste one of two things. Coefficients: a name and a number on each line, by the published names of Magic Formula 6.1, in SI units, with FZMIN, FZMAX, PRESMIN, PRESMAX, CAMMIN and CAMMAX for where it was measured. Or side forces of an upright tyre at the pressure it is driven at: load in newtons, slip angle in degrees and side force in newtons on each line, at two loads or more, some near the straight and some past the peak.",
  paste: "Coefficients or side forces",
  file: "or a tyre file",
  asCoefficients: "Take in coefficients",
  asForces: "Fit the club tyre to side forces",
  faulty: "That cannot be taken as it is:",
  more: (count: number) => `and ${count} more`,
  measured: (load: string, pressure: string, lean: string) =>
    `Measured at ${load}, ${pressure} and ${lean} of lean. Beyond that the workbook takes the nearest end, and says so.`,
  fittedAt: (load: string) =>
    `Readings from ${load}, upright, at one pressure: what other pressures and lean do is the club tyre’s. Beyond the largest load the workbook takes that, and says so.`,
  from: (least: string, most: string) => `${least} to ${most}`,
  fitted: (count: number) => `Fitted to ${count} readings`,
  peak: (load: string) => `Friction at its peak, under ${load}`,
  fall: "Lost for each kN more",
  stiffness: (load: string) => `Cornering stiffness, under ${load}`,
  plusMinus: (value: string, spread: string) => `${value} ± ${spread}`,
  spreads: (scatter: string) =>
    `± is one standard deviation. The readings scatter by ${scatter} about the fit. All else (pressure, lean, braking) stays the club tyre’s.`,
  residuals: "What each reading is off from the fitted tyre",
  residualsOf: (most: string) =>
    `Residuals against slip angle, by load: the largest is ${most}. The table below has each.`,
  unlike:
    "Where points of one load lie on one side, or bend, this tyre’s curve has another shape than the club tyre’s.",
  load: "load",
  slip: "slip angle",
  force: "side force",
  off: "off by",
  table: "The readings and their residuals",
  put: { front: "Put it on the front", rear: "Put it on the rear", both: "Put it on both axles" },
  done: (where: string) => `The tyre is on the ${where}.`,
  where: { front: "front axle", rear: "rear axle", both: "car, front and rear" },
  asFile: "Save it as a tyre file",
  ownName: "Own tyre",
  fittedName: "Fitted tyre",
} as const;
