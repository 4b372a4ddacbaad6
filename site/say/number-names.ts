const named: Readonly<Record<string, string>> = {
  "body.mass": "mass of the body",
  "body.behindFrontAxle": "weight front to rear",
  "body.leftOfCentre": "weight left to right",
  "body.height": "height of the centre of gravity",
  "inertia.roll": "roll inertia",
  "inertia.pitch": "pitch inertia",
  "inertia.yaw": "yaw inertia",
  brakeFrontShare: "brake share",
  driveFrontShare: "drive share",
  "tyre.grip": "grip of the tyres",
  "tyre.loadSensitivity": "load sensitivity of the tyres",
  "tyre.stiffness": "stiffness of the tyres",
  "tyre.bestPressure": "best pressure of the tyres",
};

/** A number that may be off, by its place in the car file, in words such as "rear tyre grip". */
export function numberInWords(path: string): string {
  const spelt = path.replaceAll(".", " ").replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return named[path] ?? spelt.replace("geometry ", "");
}
