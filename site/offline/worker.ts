/**
 * The service worker: keeps the whole course on the device and answers from there.
 *
 * A newer course is fetched beside the present one, whole or not at all, and waits until someone asks
 * for it; so one visit never mixes two courses.
 */
import type { ServiceWorker } from "./worker-types.js";

/** Put in by the build: the files to keep at once, those to keep once used, a name for just these contents. */
declare const FILES: readonly string[];
declare const LATER: readonly string[];
declare const VERSION: string;

const worker = globalThis as unknown as ServiceWorker;
const { scope } = worker.registration;

/** Copies of the course below other paths of one host keep apart. */
const family = `rollbook ${scope} `;
const present = family + VERSION;

/** A response that was redirected may not answer a page; its copy may. */
const plain = (response: Response): Response =>
  response.redirected ? new Response(response.body, { headers: response.headers }) : response;

async function fetchInto(cache: Cache, file: string): Promise<void> {
  const response = await fetch(new Request(new URL(file, scope), { cache: "no-cache" }));
  if (!response.ok) throw new Error(`${file}: ${response.status}`);
  await cache.put(new URL(file, scope), plain(response));
}

async function keepAll(): Promise<void> {
  const cache = await caches.open(present);
  try {
    await Promise.all(FILES.map((file) => fetchInto(cache, file)));
  } catch (error) {
    await caches.delete(present);
    throw error;
  }
}

async function dropOthers(): Promise<void> {
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith(family) && name !== present);
  await Promise.all(old.map((name) => caches.delete(name)));
}

/** The file that an address means: without state, and as hosts shorten names. */
function fileOf(url: string): string | undefined {
  const { origin, pathname } = new URL(url);
  if (!`${origin}${pathname}`.startsWith(scope)) return undefined;
  const name = `${origin}${pathname}`.slice(scope.length) || "index.html";
  return [name, `${name}.html`].find((file) => FILES.includes(file) || LATER.includes(file));
}

async function kept(file: string, request: Request): Promise<Response> {
  // Not by opening it: that would make the cache again after a withdrawal.
  const mine = await caches.match(new URL(file, scope), { cacheName: present });
  if (mine) return mine;
  const fetched = await fetch(request);
  if (fetched.ok && LATER.includes(file)) {
    const cache = await caches.open(present);
    await cache.put(new URL(file, scope), plain(fetched.clone()));
  }
  return fetched;
}

worker.addEventListener("install", (event) => event.waitUntil(keepAll()));
worker.addEventListener("activate", (event) =>
  event.waitUntil(dropOthers().then(() => worker.clients.claim())),
);
worker.addEventListener("message", ({ data }) => {
  if (data === "show") void worker.skipWaiting();
});
worker.addEventListener("fetch", (event) => {
  const file = event.request.method === "GET" ? fileOf(event.request.url) : undefined;
  if (file) event.respondWith(kept(file, event.request));
});
