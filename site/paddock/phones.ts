import { hashOf, isSameSecret, randomLetters, randomToken } from "./secrets.js";

/** A phone that joined the day. */
export interface Phone {
  readonly id: string;
  /** The name that it files under now. */
  readonly name: string;
  /** All names that it had, so that what was written under one of them still comes in. */
  readonly names: readonly string[];
  /** Of its token. */
  readonly hash: string;
  /** When it joined, UTC. */
  readonly at: string;
  readonly removed?: true;
}

/** Phones that a day takes. */
export const MOST_PHONES = 300;
const MOST_NAMES = 20;
export const LONGEST_NAME = 80;

/** The phones of a day, by what was written of them last. */
export class Phones {
  readonly #byId = new Map<string, Phone>();
  readonly #byHash = new Map<string, string>();

  /** Takes in what was written of a phone. */
  put(phone: Phone): void {
    this.#byId.set(phone.id, phone);
    this.#byHash.set(phone.hash, phone.id);
  }

  all(): readonly Phone[] {
    return [...this.#byId.values()].filter(({ removed }) => removed !== true);
  }

  byId(id: string): Phone | undefined {
    return this.#byId.get(id);
  }

  byToken(token: string): Phone | undefined {
    const hash = hashOf(token);
    const phone = this.#byId.get(this.#byHash.get(hash) ?? "");
    return phone === undefined || phone.removed || !isSameSecret(phone.hash, hash)
      ? undefined
      : phone;
  }
}

/** A new phone and its token, which only the phone itself keeps. */
export function newPhone(name: string, at: string): { phone: Phone; token: string } {
  const token = randomToken();
  return { phone: { id: randomLetters(8), name, names: [name], hash: hashOf(token), at }, token };
}

/** The phone under another name. */
export const renamed = (phone: Phone, name: string): Phone => ({
  ...phone,
  name,
  names: [name, ...phone.names.filter((old) => old !== name)].slice(0, MOST_NAMES),
});

/** A name that a phone may have; nothing where it is none. */
export function asName(value: unknown): string | undefined {
  const name = typeof value === "string" ? value.normalize("NFC").trim() : "";
  return name !== "" && name.length <= LONGEST_NAME ? name : undefined;
}

/** Reads what was written of a phone. */
export function asPhone(value: unknown): Phone | undefined {
  const { id, name, names, hash, at, removed } = (value ?? {}) as Record<string, unknown>;
  const texts = [id, name, hash, at];
  const sound =
    texts.every((text) => typeof text === "string") &&
    Array.isArray(names) &&
    names.every((one) => typeof one === "string");
  return sound && (removed === undefined || removed === true) ? (value as Phone) : undefined;
}
