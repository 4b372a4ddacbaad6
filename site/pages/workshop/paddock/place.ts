import { signal } from "@preact/signals";
import { documentOf } from "@rollbook/page";

/** What this device is at the paddock of its address. */
export interface Member {
  readonly role: "phone" | "desk";
  readonly token: string;
  readonly name: string;
  /** When it joined, UTC. */
  readonly at: string;
}

/** Nothing where it has not joined. */
export const member = documentOf<Member | undefined>({
  key: "paddock/member",
  empty: undefined,
  read: (kept) => {
    const { role, token, name, at } = (kept ?? {}) as Record<string, unknown>;
    const texts = [token, name, at].every((text) => typeof text === "string");
    return texts && (role === "phone" || role === "desk") ? (kept as Member) : undefined;
  },
});

/** The day that the desk keeps, an entry; empty where none was filed yet. */
export const dayAtDesk = documentOf<string>({
  key: "paddock/day",
  empty: "",
  read: (kept) => (typeof kept === "string" ? kept : undefined),
});

/** The clock as it was at the desk's machine when this device heard or set it last, as text. */
export const clockAtDesk = documentOf<string>({
  key: "paddock/clock",
  empty: "",
  read: (kept) => (typeof kept === "string" ? kept : undefined),
});

/** A phone as the desk sees it. */
export interface PhoneSeen {
  readonly id: string;
  readonly name: string;
  readonly at: string;
}

/** How it stands with the desk. */
export interface Standing {
  /** Whether the desk answered last; nothing before the first answer. */
  readonly reachable?: boolean;
  /** The phone was removed, or the day is another one. */
  readonly out: boolean;
  /** Why the desk did not take what was sent last, in its own sentence; it is sent again. */
  readonly trouble?: string | undefined;
  /** Ids of entries that are not at the desk yet. */
  readonly waiting: readonly string[];
  /** How many of them stand aside, since the desk's program fails on one of them. */
  readonly aside: number;
  /** Ids of entries that the desk does not take. */
  readonly refused: readonly string[];
}

export const standing = signal<Standing>({ out: false, waiting: [], aside: 0, refused: [] });
export const phones = signal<readonly PhoneSeen[]>([]);

/** Whether this address says that a day is kept here. */
export const isPaddock = (): boolean => /(^|; )rollbook-paddock=1/.test(document.cookie);

export const isPhone = (): boolean => member.now.value?.role === "phone";
export const isDesk = (): boolean => member.now.value?.role === "desk";
