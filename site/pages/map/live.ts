import { signal } from "@preact/signals";
import {
  type ApproximateMap,
  approximateMap,
  type Car,
  finerMap,
  gridOf,
  type MapAxis,
  type MapOf,
  Refusal,
  type SetUpMap,
} from "@rollbook/lib";
import { reader } from "@rollbook/page";
import { refusalInWords } from "../../say/refusal.js";
import { mapOf } from "./map-of.js";
import { type Scales, scalesOf } from "./scales.js";
import { mapSolver } from "./solve/solver.js";
import { axesIn, type MapState, markOf } from "./state.js";
import type { MapPainter } from "./view/painter.js";

const rest = 150; // ms without a move until the map is worked out in full and told
const coarse = 22; // places a side of a map worked out while a lever moves

/** How near the drawn map is to one that is worked out in full; an error in m/s². */
export type Exactness =
  | { readonly kind: "exact" }
  | { readonly kind: "moving" | "working"; readonly error: number };

/** A map with what it is of. */
export interface Known {
  readonly of: MapOf;
  readonly map: SetUpMap;
  readonly scales: Scales;
}

/** The map that the page shows: it is sketched while a lever moves, and worked out in full at rest. */
export class LiveMap {
  readonly state;
  /** What is drawn, and under the mark. */
  readonly of = signal<MapOf | undefined>(undefined);
  readonly exactness = signal<Exactness | undefined>(undefined);
  /** The map in full; nothing while it is being worked out. */
  readonly exact = signal<Known | undefined>(undefined);
  /** What the legend tells of. */
  readonly told = signal<Pick<Known, "map" | "scales"> | undefined>(undefined);
  /** 0–1 while it is being worked out in full. */
  readonly progress = signal<number | undefined>(undefined);
  /** Why there is no map, where the car cannot stand so. */
  readonly refused = signal<string | undefined>(undefined);
  /** What an address asked for that this car does not have. */
  readonly faults = signal<readonly string[]>([]);
  /** It was the mark that moved last: what stands under it is read out. */
  readonly aloud = signal(false);
  /** Milliseconds that the last frame took, while a lever moved. */
  readonly took = signal<number | undefined>(undefined);

  #painter: MapPainter | undefined;
  #scales: Scales | undefined;
  #waiting = 0; // a frame that was asked for
  #timer = 0; // the rest after a move
  #base: SetUpMap | undefined; // exact, over the same levers, with the third one nearby
  #drawnFrom: SetUpMap | undefined;
  #near: ApproximateMap | undefined; // the last one drawn
  #round = 0;
  #worst = 0; // of those drawn from one base
  readonly #solver = mapSolver("map-worker.js");

  constructor(
    readonly car: Car,
    readonly axes: readonly MapAxis[],
    first: MapState,
  ) {
    this.state = signal(first);
  }
  /** Draws with this painter from now on. */
  paintWith(painter: MapPainter): void {
    this.#painter = painter;
    this.#settle();
  }
  /** Another map altogether. */
  change(next: MapState): void {
    this.state.value = next;
    this.#scales = undefined;
    [this.#base, this.#near, this.#worst] = [undefined, undefined, 0];
    this.exact.value = undefined;
    this.faults.value = [];
    if (this.#painter !== undefined) this.#settle();
  }
  /** The third lever is at another value. */
  move(value: number): void {
    if (this.progress.value !== undefined) this.#solver.drop();
    this.progress.value = undefined;
    this.state.value = { ...this.state.value, value };
    clearTimeout(this.#timer);
    this.#timer = window.setTimeout(() => this.#settle(), rest);
    if (this.#waiting !== 0) return;
    this.#waiting = requestAnimationFrame(() => {
      this.#waiting = 0;
      this.#unlessRefused(() => {
        this.#sketch(this.#now(), "moving");
        this.#keepUp(this.#now());
      });
    });
  }
  /** Puts the reading mark somewhere else. */
  markAt(mark: { readonly x: number; readonly y: number }): void {
    this.state.value = { ...this.state.value, mark };
    this.aloud.value = true;
    this.point();
  }
  /** Shows the reading mark where it is. */
  point(): void {
    const { along, up } = axesIn(this.state.value, this.axes);
    const { x, y } = markOf(this.state.value, along, up);
    this.#painter?.point(x, y);
  }
  #now(): MapOf {
    return mapOf(this.state.value, this.car, this.axes);
  }
  #draw(of: MapOf, map: SetUpMap): Scales {
    const scales = this.#scales ?? scalesOf(map, reader.units);
    this.#scales = scales;
    this.#painter?.draw({ map, scales, along: of.along, up: of.up });
    this.of.value = of;
    this.aloud.value = false;
    this.point();
    return scales;
  }
  /** Draws what few places tell of the map, and says how far off it is. */
  #sketch(of: MapOf, kind: "moving" | "working"): void {
    const started = performance.now();
    const [base, near] = [this.#base, this.#near];
    const map = approximateMap(of, gridOf(of), { base, near, round: this.#round++ });
    this.#near = map;
    this.#worst = Math.max(this.#drawnFrom === base ? this.#worst : 0, map.error);
    this.#drawnFrom = base;
    const scales = this.#draw(of, map);
    this.exactness.value = { kind, error: this.#worst };
    if (kind === "moving") this.took.value = performance.now() - started;
    else this.told.value = { map, scales };
  }
  /** Has a coarse map worked out beside the page, so that what is drawn while a lever moves starts near. */
  #keepUp(of: MapOf): void {
    if (!this.#solver.beside || this.#solver.busy) return;
    const onDone = (map: SetUpMap) => {
      this.#base = finerMap(map, gridOf(of));
    };
    this.#solver.begin({ of, grid: gridOf(of, coarse), aside: true, onDone });
  }
  /** Draws and tells everything in full. */
  #finish(of: MapOf, map: SetUpMap): void {
    this.#base = map;
    this.#scales = undefined;
    const scales = this.#draw(of, map);
    this.progress.value = undefined;
    this.exactness.value = { kind: "exact" };
    this.told.value = { map, scales };
    this.exact.value = { of, map, scales };
  }
  /** Keeps the reason instead of a map where the car cannot stand so. */
  #unlessRefused(work: () => void): void {
    try {
      work();
      this.refused.value = undefined;
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      this.refused.value = refusalInWords(error, reader);
      this.exactness.value = undefined;
      this.progress.value = undefined;
    }
  }
  /** Has the map worked out in full. */
  #settle(): void {
    clearTimeout(this.#timer);
    this.#solver.drop();
    this.#unlessRefused(() => {
      const of = this.#now();
      if (this.#waiting !== 0 || this.#near === undefined) this.#sketch(of, "working");
      else this.exactness.value = { kind: "working", error: this.#worst };
      cancelAnimationFrame(this.#waiting);
      this.#waiting = 0;
      this.progress.value = 0;
      this.#solver.begin({
        of,
        grid: gridOf(of),
        onPart: (part) => {
          this.progress.value = part;
        },
        onDone: (map) => this.#finish(of, map),
      });
    });
  }
}
