import loadMujoco, { type MainModule } from "mujoco-js";

/** The parts of the engine's file system that its types leave out. */
interface WithFiles {
  readonly FS: {
    mkdir(path: string): void;
    mount(type: unknown, options: { root: string }, path: string): void;
    writeFile(path: string, text: string): void;
  };
  readonly MEMFS: unknown;
}

/** A general engine for jointed bodies, which knows nothing of cars. */
export interface Mechanics {
  /** Lets a model come to rest and gives the force of each row of its constraints, N. */
  forcesAtRest(xml: string, seconds: number): number[];
}

/** Starts the engine. */
export async function startMechanics(): Promise<Mechanics> {
  const engine: MainModule = await loadMujoco();
  const { FS, MEMFS } = engine as unknown as WithFiles;
  FS.mkdir("/models");
  FS.mount(MEMFS, { root: "." }, "/models");
  return {
    forcesAtRest(xml, seconds) {
      FS.writeFile("/models/car.xml", xml);
      const model = engine.MjModel.loadFromXML("/models/car.xml");
      const data = new engine.MjData(model);
      const speed = () => Math.max(...Array.from(data.qvel as Float64Array, Math.abs));
      const rest = Math.round(REST / TIME_STEP);
      for (let i = 0; i < seconds / TIME_STEP; i++) {
        engine.mj_step(model, data);
        if (i % rest === rest - 1 && speed() < STILL) break;
      }
      const last = speed();
      const forces = Array.from(data.efc_force as Float64Array);
      data.delete();
      model.delete();
      if (!(last < STILL)) throw new Error(`The model still moves at ${last} after ${seconds} s.`);
      return forces;
    },
  };
}

const TIME_STEP = 0.001; // s
const REST = 0.5; // s between looks at whether it still moves
const STILL = 1e-6; // m/s or rad/s

/** Options of every model: gravity tilted, which is what a steady turn to the left feels like. */
export function options(lateralAcceleration: number, gravity = 9.80665): string {
  return `<compiler angle="radian"/>
  <option timestep="${TIME_STEP}" gravity="0 ${-lateralAcceleration} ${-gravity}"
    integrator="implicitfast" solver="Newton" iterations="100" tolerance="1e-12"/>
  <default><equality solref="0.005 1" solimp="0.9999 0.9999 0.001 0.5 2"/></default>`;
}
