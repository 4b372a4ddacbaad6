import { type ForWhom, forWhom } from "./for-whom.js";
import { dateFrom, nameFrom, numbersFrom, urlFrom } from "./options.js";

const text = { type: "string", default: "" } as const;
const yes = { type: "boolean", default: false } as const;

/** What every file that holds the course is asked by. */
export const usualOptions = {
  ...{ name: text, chapters: text, url: text, car: text, class: text, us: yes, help: yes },
  date: { type: "string", default: new Date().toISOString().slice(0, 10) },
} as const;

export const usualUsage = `
  --name      whom it is for, up to 80 characters (nobody named when left out)
  --date      the day on its first page (today when left out)
  --chapters  numbers of its chapters (all when left out)
  --url       address of the live course, to which predictions and other chapters then lead (that of
              the class when left out)
  --car       a car file: figures and sums are worked for it (the base car of the class, or the
              workbook's own, when left out)
  --class     a class file: its rules, how the car stands to them, and its briefing stand in front
  --us        US units`;

interface Values {
  readonly name: string;
  readonly date: string;
  readonly chapters: string;
  readonly url: string;
  readonly car: string;
  readonly class: string;
  readonly us: boolean;
}

interface Asked extends ForWhom {
  readonly name: string;
  readonly date: string;
  readonly url: string;
  readonly numbers: readonly string[];
}

/** What was asked for, read; or a sentence about what is wrong with it. */
export function askedFor(values: Values): Asked {
  const whom = forWhom(values);
  return {
    ...whom,
    name: nameFrom(values.name),
    date: dateFrom(values.date),
    url: urlFrom(values.url || (whom.carClass?.course ?? "")),
    numbers: numbersFrom(values.chapters),
  };
}
