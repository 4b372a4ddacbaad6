import type { Change, Cost, LoadMoved, Proposal } from "@rollbook/lib";
import { acceleration, SHOWN, shiftInWords, towards } from "./amount.js";
import { balanceText } from "./balance.js";
import { inList } from "./in-list.js";
import { type Reader, spelt } from "./reader.js";
import { formatAlike } from "./shown-range.js";

/** Why a change should help where it is for, in one sentence: which load moves where, or what else does it. */
export function whyItHelps(
  { loads, change }: Pick<Proposal, "loads" | "change">,
  reader: Reader,
): string {
  const { corner, phase, shift } = loads;
  const moves = `moves balance there ${towards(shift)}`;
  return spelt(`${corner}, ${phase}: ${because(loads, change, moves, reader)}`, reader);
}

function because(loads: LoadMoved, change: Change, moves: string, reader: Reader): string {
  switch (loads.tells) {
    case "across":
      return `${shared(loads, reader)}; tyres that share a load evenly grip more, which ${moves}.`;
    case "along":
      return `${carried(loads, reader)}; grip grows by less than load, which ${moves}.`;
    case "against":
      return `beware, loads alone would move balance the other way (${shared(loads, reader)}); how the wheels lean and point outweighs them and ${moves}, so drive it before you believe it.`;
    case "neither":
      return `it moves next to no load; ${otherwise(change)}, which ${moves}.`;
  }
}

const ends = ["front", "rear"] as const;
const SHOWN_LOAD = 10; // N

const newtons = (value: number, { units }: Reader): string =>
  formatAlike("force", Math.abs(value), 0, units);

/** How outer and inner tyres of each axle share their load otherwise. */
function shared({ across }: LoadMoved, reader: Reader): string {
  const moved = ends.filter((end) => Math.abs(across[end]) >= SHOWN_LOAD);
  return moved
    .map((end) => {
      const by = newtons(across[end], reader);
      return across[end] < 0
        ? `the ${end} tyres share their load more evenly (${by} less between outer and inner)`
        : `the ${end} tyres share theirs less evenly (${by} more)`;
    })
    .join(", ");
}

/** What each axle carries more or less. */
function carried({ along }: LoadMoved, reader: Reader): string {
  const moved = ends.filter((end) => Math.abs(along[end]) >= SHOWN_LOAD);
  return moved
    .map((end) => {
      const by = newtons(along[end], reader);
      return `the ${end} axle carries ${by} ${along[end] > 0 ? "more" : "less"}`;
    })
    .join(", ");
}

/** What does it where no load moves. */
function otherwise(change: Change): string {
  const end = "end" in change ? change.end : "";
  switch (change.lever) {
    case "camber":
      return `the ${end} tyres stand otherwise on the road in the turn, so that they grip otherwise`;
    case "toe":
      return `the ${end} wheels point otherwise, so that inner and outer share the work otherwise`;
    case "tyrePressure":
      return `the ${end} tyres grip otherwise at the load that they have`;
    case "brakeFrontShare":
      return change.by > 0
        ? "the front tyres brake more and have less left for turning, the rear ones more"
        : "the front tyres brake less and have more left for turning, the rear ones less";
    default:
      return "how the wheels lean and point in the turn does it";
  }
}

/** What a change does in another part of a corner, and to what somebody said of it. */
export function costInWords(
  { corner, phase, shift, named, further }: Cost,
  reader: Reader,
): string {
  const place = `${corner}, ${phase}`;
  if (named.length === 0) return `${place}: balance moves ${shiftInWords(shift, reader)}.`;
  return `${place}, ${whoNamed(named)}: it comes ${distance(further, reader)}.`;
}

const MOST_NAMES = 3;

/** Who said what of a place; of many, how many and between what. */
function whoNamed(named: Cost["named"]): string {
  const balances = named.map(({ report: { balance = 0 } }) => balance);
  if (named.length <= MOST_NAMES)
    return `named by ${inList(named.map(({ driver }, i) => `${driver} (${balanceText(balances[i] ?? 0)})`))}`;
  const [least, most] = [Math.min(...balances), Math.max(...balances)].map(balanceText);
  return `named by ${named.length} drivers (${least} to ${most})`;
}

function distance(further: number, reader: Reader): string {
  if (Math.abs(further) < SHOWN) return "no nearer and no further";
  const by = acceleration(Math.abs(further), reader);
  return further > 0 ? `${by} further from balance` : `${by} nearer to balance`;
}
