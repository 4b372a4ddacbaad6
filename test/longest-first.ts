import { BaseSequencer, type TestSpecification } from "vitest/node";
import { inRoot } from "../site/build/paths.js";
import { usualSeconds } from "./usual-seconds.js";

const secondsOf = ({ moduleId }: TestSpecification): number =>
  usualSeconds[moduleId.slice(inRoot("").length)] ?? 0;

/** As the runner sorts, one project after the other; long files first, so that none is left to run on alone. */
export default class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const projects = [...new Set(sorted.map(({ project }) => project))];
    return projects.flatMap((project) =>
      sorted
        .filter((file) => file.project === project)
        .sort((one, other) => secondsOf(other) - secondsOf(one)),
    );
  }
}
