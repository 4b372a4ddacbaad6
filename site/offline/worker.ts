/**
 * The service worker: keeps the whole course on the device and answers from there.
 *
 * A newer course is fetched beside the present one, whole or not at all, and waits until someone asks
 * for it; so one visit never mixes two courses.
 */
import { words } from "./words.js";
import type { ServiceWorker } from "./worker-types.js";

/** Put in by the build: the files to keep at once and those to keep once used, with the SHA-256 of each, and a name for just these contents. */
declare const FILES: Readonly<Record<string, string>>;
declare const LATER: Readonly<Record<string, string>>;
declare const VERSION: string;

const worker = globalThis as unknown as ServiceWorker;
const { scope } = worker.registration;

/** Copies of the course below other paths of one host keep apart. */
const family = `rollbook ${scope} `;
const present = family + VERSION;

const hashes = new Map([...Object.entries(FILES), ...Object.entries(LATER)]);

async function hashOf(content: ArrayBuffer): Promise<string> {
  const hash = new Uint8Array(await crypto.subtle.digest("SHA-256", content));
  return btoa(String.fromCharCode(...hash));
}

/**
 * Fetches a file of this course and keeps it; undefined where the host answers with anything else: a
 * page to log in, or a file of another course.
 */
async function fetchKept(file: string): Promise<Response | undefined> {
  const address = new URL(file, scope);
  const { ok, headers, body } = await fetch(new Request(address, { cache: "no-cache" }));
  const content = await new Response(body).arrayBuffer();
  if (!ok || (await hashOf(content)) !== hashes.get(file)) return undefined;
  const own = new Response(content, { headers: unpacked(headers) }); // one that was redirected may not answer a page
  const cache = await caches.open(present);
  await cache.put(address, own.clone());
  return own;
}

/** Headers of a content that is no longer packed as it came. */
function unpacked(headers: Headers): Headers {
  const own = new Headers(headers);
  for (const name of ["content-encoding", "content-length"]) own.delete(name);
  return own;
}

async function keepAll(): Promise<void> {
  const came = await Promise.allSettled(Object.keys(FILES).map(fetchKept));
  if (came.every((one) => one.status === "fulfilled" && one.value !== undefined)) return;
  await caches.delete(present);
  throw new Error("not all files are of this course");
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
  return [name, `${name}.html`].find((file) => hashes.has(file));
}

/** What stands in for a page that the host has only of another course. */
const ofAnother = (): Response =>
  new Response(words.ofAnother, { status: 409, headers: { "Content-Type": "text/html" } });

async function kept(file: string): Promise<Response> {
  // Not by opening it: that would make the cache again after a withdrawal.
  const mine = await caches.match(new URL(file, scope), { cacheName: present });
  return mine ?? (await fetchKept(file)) ?? ofAnother();
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
  if (file) event.respondWith(kept(file));
});
