import { writeFileSync } from "node:fs";
import { drawingOf } from "../pages/measure/drawings.js";
import { specs, withoutForm } from "../pages/measure/model/spec.js";

/** As on the page (`site/pages/measure/style.css`), on paper in either colour scheme. */
const style =
  "svg{fill:none;stroke:#234;stroke-width:1.6;stroke-linejoin:round;stroke-linecap:round;background:#fff}" +
  ".thin,.dashed{stroke-width:.8}.dashed{stroke-dasharray:5 3}.full,.dot{fill:#234}.full{fill-opacity:.15}" +
  "text{fill:#234;stroke:none;font:italic 12px Georgia,serif}";

/** The drawings of the page Measure as files of their own, for its document. */
export const measuringDrawings = (): Record<string, string> =>
  Object.fromEntries(
    [...specs.map(({ id }) => id), ...withoutForm].map((id) => [
      `docs/images/measure-${id}.svg`,
      `${drawingOf(id)
        .replace("<svg ", '<svg xmlns="http://www.w3.org/2000/svg" ')
        .replace(">", `><style>${style}</style>`)}\n`,
    ]),
  );

/** Writes them; the test says when they are out of date. */
if (process.argv[1]?.endsWith("measuring-docs.ts"))
  for (const [file, text] of Object.entries(measuringDrawings())) writeFileSync(file, text);
