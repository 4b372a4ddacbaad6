/** The part of a service worker's world that is used here; the page's own types lack it. */
interface Lasting extends Event {
  waitUntil(work: Promise<unknown>): void;
}

interface Fetching extends Event {
  readonly request: Request;
  respondWith(response: Promise<Response>): void;
}

export interface ServiceWorker {
  readonly registration: { readonly scope: string };
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(type: "install" | "activate", listener: (event: Lasting) => void): void;
  addEventListener(type: "fetch", listener: (event: Fetching) => void): void;
  addEventListener(type: "message", listener: (event: MessageEvent) => void): void;
}
