/** A test file that a change concerns. */
export interface Candidate {
  readonly file: string;
  /** Imports between it and the nearest changed file. */
  readonly distance: number;
  /** What it takes by itself, s. */
  readonly seconds: number;
}

export interface Choice {
  readonly chosen: readonly Candidate[];
  /** What does not fit into the time. */
  readonly left: readonly Candidate[];
}

const workers = 2;
const begin = 8; // s: types, lint, the graph, the start of the runner
const build = 8; // s: the course, where a test looks at it

const needsCourse = (file: string): boolean => !/^test\/(lib|outside)\//.test(file);

/** The nearest tests first, as many as fit into so many seconds. */
export function choose(candidates: readonly Candidate[], most: number): Choice {
  const near = [...candidates].sort((a, b) => a.distance - b.distance || a.seconds - b.seconds);
  const chosen: Candidate[] = [];
  const left: Candidate[] = [];
  const takes = (files: readonly Candidate[]) =>
    begin +
    (files.some(({ file }) => needsCourse(file)) ? build : 0) +
    files.reduce((sum, { seconds }) => sum + seconds, 0) / workers;
  for (const one of near) (takes([...chosen, one]) <= most ? chosen : left).push(one);
  return { chosen, left };
}
