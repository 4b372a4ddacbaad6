const NAME = "rollbook paddock";
const LEASE = "rollbook:paddock-lease";
const RENEWED = 2000; // ms
const LASTS = 6000; // ms after which a tab that says nothing more is gone

/** What the tab that speaks with the desk tells the others. */
export type Told = { readonly standing: unknown; readonly phones: unknown } | "asks";

let channel: BroadcastChannel | undefined;

/** Hears what other tabs tell; gives what tells them. */
export function amongTabs(hear: (told: Told) => void): (told: Told) => void {
  if (typeof BroadcastChannel === "undefined") return () => {};
  channel ??= new BroadcastChannel(NAME);
  channel.onmessage = ({ data }) => hear(data as Told);
  return (told) => channel?.postMessage(told);
}

/**
 * Does work in one tab of this address alone: browsers let six connections be open at a time. Another
 * tab takes over when this one is closed. Over plain http browsers lend no locks; a lease does there.
 */
export function inOneTab(work: () => void): void {
  if (typeof navigator.locks === "object")
    void navigator.locks.request(NAME, () => {
      work();
      return new Promise(() => {});
    });
  else lease(work);
}

function lease(work: () => void): void {
  const own = String(crypto.getRandomValues(new Uint32Array(1))[0]);
  let leading = false;
  const renew = () => {
    const [holder = "", until = "0"] = (read() ?? "").split(" ");
    if (holder !== own && Number(until) > Date.now()) return;
    write(`${own} ${Date.now() + LASTS}`);
    if (leading) return;
    leading = true;
    work();
  };
  renew();
  setInterval(renew, RENEWED);
  addEventListener("pagehide", () => leading && write(""));
}

function read(): string | null {
  try {
    return localStorage.getItem(LEASE);
  } catch {
    return null;
  }
}

function write(text: string): void {
  try {
    localStorage.setItem(LEASE, text);
  } catch {
    // A browser that keeps nothing has no other tab of this log either.
  }
}
