import { readdirSync, readFileSync } from "node:fs";
import { transformSync } from "esbuild";

/** Where texts of three words or more may stand in `lib`, by the front of the path, and why. */
const places: Readonly<Record<string, string>> = {
  "car/file/": "what a field of a car file is, and a plain sentence for each fault of one",
  "day/log/csv.ts": "a plain sentence for each fault of a table",
  "day/log/entry-file.ts": "a plain sentence for each fault of an entry",
  "day/log/log-file.ts": "a plain sentence for each fault of a log",
  "day/log/log-shape.ts": "what a field of an entry is",
  "day/log/report-csv.ts": "a plain sentence for each fault of a table",
  "day/log/report-file.ts": "what a field of a report is",
  "day/plan/venue-file.ts":
    "what a field of a venue is, and a plain sentence for each fault of one",
  "day/example/": "invented people speak",
  "car/demo-car.ts": "invented data",
  "parameters.ts": "names of parameters, which the sentences of refusals and files have too",
  "check.ts": "the sentence of a refusal, made from field, value and range",
  "solve.ts": "the sentence of a refusal",
  "linear.ts": "the sentence of a refusal",
  "car/tyres.ts": "the sentence of a refusal",
  "load/distribution.ts": "the sentence of a refusal",
  "balance/stance.ts": "the sentence of a refusal",
  "balance/car-balance.ts": "the sentence of a refusal",
  "statics/balance-of-forces.ts": "the sentence of a refusal",
};

/** Values that a file or a type holds, though they are three words or more. */
const values = [
  "at a top",
  "club tyre (invented)",
  "common practice, no source",
  "felt, not predicted",
  "front slides first",
  "published road tyre",
  "published tyre of 1987",
  "rear slides first",
  "releasing the brake",
  "share of a whole",
];

const LITERAL = /"(?:[^"\\\n]|\\.)*"|`(?:[^`\\]|\\.)*`/g;

/** Texts of three words or more in a source, but those that a refusal, or a check that refuses, is given. */
export function proseIn(source: string): string[] {
  const { code } = transformSync(source, { loader: "ts", legalComments: "none", charset: "utf8" });
  const bare = code.replace(LITERAL, (text) => "·".repeat(text.length));
  return [...code.matchAll(LITERAL)]
    .filter(({ index }) => !/^(Refusal|require\w+)$/.test(callOpenAt(bare.slice(0, index))))
    .map(([text]) => text.slice(1, -1))
    .filter((text) => wordsIn(text) > 2 && !values.includes(text));
}

const wordsIn = (text: string): number =>
  text.replace(/\$\{[^}]*\}/g, " ").match(/(?<![\w./{}-])[A-Za-z][a-z’']+(?![\w/{}-]|\.\w)/g)
    ?.length ?? 0;

/** The name of the innermost call that is still open at the end; empty where there is none. */
function callOpenAt(before: string): string {
  let depth = 0;
  for (let at = before.length - 1; at >= 0; at--) {
    if (before[at] === ")") depth += 1;
    if (before[at] !== "(") continue;
    if (depth === 0) return /(\w*)$/.exec(before.slice(0, at))?.[1] ?? "";
    depth -= 1;
  }
  return "";
}

/** One sentence for each text below a folder that belongs into `site/say`. */
export function proseBelow(folder: string): string[] {
  const files = readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts") && !file.startsWith("dist/"))
    .filter((file) => !Object.keys(places).some((place) => file.startsWith(place)))
    .sort();
  return files.flatMap((file) =>
    proseIn(readFileSync(`${folder}/${file}`, "utf8")).map(
      (text) => `${file} says “${text}”: a sentence belongs into site/say, a fact into lib.`,
    ),
  );
}
