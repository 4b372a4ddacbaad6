import { signal } from "@preact/signals";
import { reader } from "@rollbook/page";
import { broughtIn, joined, type Piece } from "../../../hand-over/file-links.js";
import { unpack } from "../../../hand-over/packed.js";
import { classWords as words } from "../../../say/your-car/classes.js";
import { dropPieces, keepPiece } from "../../../store/pieces.js";
import { say } from "../../../ui/notice.js";
import { nameOfSound, readFile, type Sound } from "../model/read-file.js";
import { keepClass } from "./classes.js";
import { keepCar, namesInUse, newId } from "./kept.js";

/** What links have brought and nobody has answered yet. */
type Brought =
  | { readonly sound: Sound; readonly notes: readonly string[] }
  | { readonly faults: readonly string[] }
  | { readonly waiting: readonly Piece[] };

export const brought = signal<Brought | undefined>(undefined);

export const leaveBrought = (): void => {
  const now = brought.value;
  if (now && "waiting" in now) void dropPieces(now.waiting[0]?.of ?? "");
  brought.value = undefined;
};

/** Reads what the address brings along, and lets the address forget it. */
export async function readAddress(): Promise<void> {
  const found = broughtIn(location.hash);
  if (found === undefined) return;
  history.replaceState(null, "", location.href.replace(/#.*$/s, ""));
  if (!("of" in found)) return offer(found.letters);
  const all = await keepPiece(found);
  const letters = joined(all);
  if (letters !== undefined) {
    void dropPieces(found.of);
    return offer(letters);
  }
  const isWhole = new Set(all.map(({ number }) => number)).size === found.count;
  brought.value = isWhole ? { faults: [] } : { waiting: all };
}

async function offer(letters: string): Promise<void> {
  const text = await unpack(letters);
  if (text === undefined) {
    brought.value = { faults: [] };
    return;
  }
  const read = readFile(text, namesInUse(), newId(), reader.units);
  brought.value = "faults" in read ? { faults: read.faults } : { sound: read, notes: read.notes };
}

/** Takes in what a link brought. */
export async function takeBrought(sound: Sound): Promise<void> {
  const held = await ("car" in sound ? keepCar(sound.car) : keepClass(sound.carClass));
  if (held) brought.value = undefined;
  say(held ? words.tookIn(nameOfSound(sound)) : words.notKept);
}
