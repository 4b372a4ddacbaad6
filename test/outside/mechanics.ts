import loadMujoco, { type MainModule, type MjData } from "mujoco-js";

/** The parts of the engine's file system that its types leave out. */
interface WithFiles {
  readonly FS: {
    mkdir(path: string): void;
    mount(type: unknown, options: { root: string }, path: string): void;
    writeFile(path: string, text: string): void;
  };
  readonly MEMFS: unknown;
}

/** What a model that stands still says of itself. */
export interface AtRest {
  /** force of each row of its constraints, N */
  readonly forces: number[];
  /** what its sensors read, in their order */
  readonly readings: number[];
}

/** m/s² along x, y and z */
export type Gravity = readonly [number, number, number];

/** A general engine for jointed bodies, which knows nothing of cars. */
export interface Mechanics {
  /** Lets a model come to rest: nothing in it moves faster than `still`, m/s or rad/s. */
  atRest(xml: string, seconds: number, still?: number): AtRest;
  /** Lets a model move while its weight turns, m/s², until what it says of itself is enough. */
  follow(
    xml: string,
    gravityAt: (seconds: number) => Gravity,
    enough: (now: AtRest) => boolean,
  ): void;
}

/** Starts the engine. */
export async function startMechanics(): Promise<Mechanics> {
  const engine: MainModule = await loadMujoco();
  const { FS, MEMFS } = engine as unknown as WithFiles;
  FS.mkdir("/models");
  FS.mount(MEMFS, { root: "." }, "/models");
  const open = (xml: string) => {
    FS.writeFile("/models/car.xml", xml);
    const model = engine.MjModel.loadFromXML("/models/car.xml");
    return { model, data: new engine.MjData(model) };
  };
  const say = (data: MjData): AtRest => ({
    forces: Array.from(data.efc_force as Float64Array),
    readings: Array.from(data.sensordata as Float64Array),
  });
  return {
    atRest(xml, seconds, still = 1e-6) {
      const { model, data } = open(xml);
      const speed = () => Math.max(...Array.from(data.qvel as Float64Array, Math.abs));
      const rest = Math.round(REST / TIME_STEP);
      for (let i = 0; i < seconds / TIME_STEP; i++) {
        engine.mj_step(model, data);
        if (i % rest === rest - 1 && speed() < still) break;
      }
      const [last, now] = [speed(), say(data)];
      data.delete();
      model.delete();
      if (!(last < still)) throw new Error(`The model still moves at ${last} after ${seconds} s.`);
      return now;
    },
    follow(xml, gravityAt, enough) {
      const { model, data } = open(xml);
      const look = Math.round(LOOK / TIME_STEP);
      for (let i = 0; i < LONGEST / TIME_STEP; i++) {
        if (i % look === 0) model.opt.gravity.set(gravityAt(i * TIME_STEP));
        engine.mj_step(model, data);
        if (i % look === look - 1 && enough(say(data))) break;
      }
      data.delete();
      model.delete();
    },
  };
}

const LOOK = 0.02; // s between looks at a model that moves
const LONGEST = 300; // s
const TIME_STEP = 0.001; // s
const REST = 0.5; // s between looks at whether it still moves

/** Options of every model: gravity tilted, which is what a steady turn to the left feels like. */
export function options(lateralAcceleration: number, gravity = 9.80665): string {
  return `<compiler angle="radian"/>
  <option timestep="${TIME_STEP}" gravity="0 ${-lateralAcceleration} ${-gravity}"
    integrator="implicitfast" solver="Newton" iterations="100" tolerance="1e-12"/>
  <default><equality solref="0.005 1" solimp="0.9999 0.9999 0.001 0.5 2"/></default>`;
}
