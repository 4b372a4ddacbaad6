import { type FrontViewLinkage, linkageByTape } from "@rollbook/lib";
import { type Asked, found, tapeOf, type Work } from "./asked.js";
import { choiceOf, meanAt } from "./input.js";
import { joints } from "./spec.js";

/** The joints as measured, on the left side; the patch where half the track says. */
function linkageOf({ car, sheet, form }: Asked, kind: string) {
  const used = joints.filter(({ kinds }) => kinds.length === 0 || kinds.includes(kind));
  const read = used.map(({ name, fields }) => {
    const [y, z] = fields.map(({ key }) => meanAt(sheet, form, key, "tape")?.value);
    return { name, y, z, keys: fields.map(({ key }) => key) };
  });
  const missing = read.flatMap(({ y, z, keys }) =>
    y === undefined || z === undefined ? keys : [],
  );
  const points = Object.fromEntries(read.map(({ name, y = 0, z = 0 }) => [name, { y, z }]));
  const contactPatch = { y: car[form.end].track / 2, z: 0 };
  return { missing, linkage: { kind, ...points, contactPatch } as unknown as FrontViewLinkage };
}

export const linkage: Work = (asked) => {
  const { car, sheet, form } = asked;
  const { missing, linkage } = linkageOf(asked, choiceOf(sheet, form, "kind"));
  if (missing.length > 0) return { missing };
  const told = linkageByTape(linkage, tapeOf(asked));
  const { geometry, linkage: inFile } = car[form.end];
  const at = (name: string) => (inFile ? {} : { path: `${form.end}.geometry.${name}` });
  const now = { moves: geometry.rollCentreMigration ?? 0, gain: geometry.camberGain ?? 0 };
  return {
    found: [
      found("rollCentre", told.rollCentreHeight, ["lengthSmall", 0], {
        ...at("rollCentreHeight"),
        predicted: geometry.rollCentreHeight,
      }),
      found("rollCentreMoves", told.rollCentreMigration, ["ratio", 2], {
        ...at("rollCentreMigration"),
        predicted: now.moves,
      }),
      found("camberGain", told.camberGain, ["anglePerTravel", 3], {
        ...at("camberGain"),
        predicted: now.gain,
      }),
    ],
    remarks: [
      ...(told.lost > 0 ? [{ code: "triesLost", value: told.lost }] : []),
      ...(inFile ? [{ code: "followsLinkage" }] : []),
    ],
  };
};
