import { asClock } from "@rollbook/lib";
import { type Context, Hono, type MiddlewareHandler } from "hono";
import { bodyLimit } from "hono/body-limit";
import { streamSSE } from "hono/streaming";
import { networkCode } from "./addresses.js";
import { Buckets } from "./buckets.js";
import { DiskRefused } from "./journal.js";
import type { PaddockDay } from "./paddock-day.js";
import { asName, renamed } from "./phones.js";
import type { Filer } from "./rights.js";
import { isSameSecret } from "./secrets.js";
import { tellAll } from "./stream.js";

/** What the desk's machine knows of the day beside its entries. */
export interface Place {
  /** What a phone needs to join. */
  readonly code: string;
  /** What gives the desk its rights. */
  readonly secret: string;
  /** Where phones find the course. */
  readonly address: string;
  /** The network that phones join, where it was named. */
  readonly network?: { readonly name: string; readonly password: string };
  /** Names of hosts, with port, that are this machine. */
  readonly hosts: ReadonlySet<string>;
}

type Env = {
  Variables: { filer: Filer };
  Bindings: { incoming?: { socket?: { remoteAddress?: string } } };
};
type Ctx = Context<Env>;

const BODY_OF_PHONE = 300_000; // bytes
const BODY_OF_DESK = 50_000_000;
const MOST_ITEMS_OF_PHONE = 200;
/** Streams of one phone or one desk. */
export const MOST_STREAMS = 6;

/** Messages of one phone, and wrong codes from one address: generous for hands, narrow for programs. */
export const limits = {
  posts: { atOnce: 60, aSecond: 3 },
  guesses: { atOnce: 20, aSecond: 0.5 },
} as const;

/** What a paddock answers below `/paddock/`. */
export function paddockApp(day: PaddockDay, place: Place): Hono<Env> {
  const app = new Hono<Env>();
  const posts = new Buckets(limits.posts);
  const guesses = new Buckets(limits.guesses);
  app.use("/paddock/*", async (c, next) => {
    const filer = filerOf(day, place, tokenOf(c));
    if (filer !== undefined) c.set("filer", filer);
    return (filer === "desk" ? largeBody : smallBody)(c, next);
  });
  app.onError((error, c) => {
    const full = error instanceof DiskRefused;
    console.error(full ? `The disk refuses: ${error.message}` : error);
    return full ? refuse(c, 507, diskRefuses) : refuse(c, 500, programFault);
  });
  app.get("/paddock/day", (c) => c.json({ kind: "rollbook paddock", version: 1 }));
  addJoining(app, day, place, guesses);
  const known = knownOnly(posts);
  addFiling(app, day, known);
  addDesk(app, day, place, known);
  return app;
}

const tooLarge = (c: Context) => c.json({ fault: "That is too much for one message." }, 413);

const smallBody = bodyLimit({ maxSize: BODY_OF_PHONE, onError: tooLarge });
const largeBody = bodyLimit({ maxSize: BODY_OF_DESK, onError: tooLarge });

const diskRefuses = "The desk cannot keep it now: its disk refuses. Nothing was filed.";
const programFault =
  "A fault of the desk’s program: nothing was filed. It is told in the terminal there.";

const refuse = (c: Context, code: 400 | 401 | 403 | 409 | 413 | 429 | 500 | 507, fault: string) =>
  c.json({ fault }, code);

const addressOf = (c: Ctx): string => c.env?.incoming?.socket?.remoteAddress ?? "";

async function fieldsOf(c: Context): Promise<Record<string, unknown>> {
  if (!/^application\/json\b/.test(c.req.header("content-type") ?? "")) return {};
  const read: unknown = await c.req.json().catch(() => undefined);
  return typeof read === "object" && read !== null ? (read as Record<string, unknown>) : {};
}

const tokenOf = (c: Context): string =>
  /^Bearer (\S{1,200})$/.exec(c.req.header("authorization") ?? "")?.[1] ?? "";

function filerOf(day: PaddockDay, { secret }: Place, token: string): Filer | undefined {
  if (token === "") return undefined;
  return isSameSecret(token, secret) ? "desk" : day.phones.byToken(token);
}

/** Lets in who has the secret or a phone's token, as often as the limit says. */
function knownOnly(posts: Buckets): MiddlewareHandler<Env> {
  return async (c, next) => {
    const filer: Filer | undefined = c.get("filer");
    if (filer === undefined) return refuse(c, 401, "This phone has not joined the day.");
    if (filer !== "desk" && c.req.method === "POST" && !posts.take(filer.id))
      return refuse(c, 429, "Too many messages; try again in a moment.");
    return next();
  };
}

/** By the code a phone sees who drives, and joins under a name; by the secret a desk gets its rights. */
function addJoining(app: Hono<Env>, day: PaddockDay, place: Place, guesses: Buckets): void {
  const guessed = async (c: Ctx, field: string, right: string) => {
    const fields = await fieldsOf(c);
    const given = typeof fields[field] === "string" ? fields[field].trim() : "";
    if (isSameSecret(field === "code" ? given.toLowerCase() : given, right)) return fields;
    const often = !guesses.take(addressOf(c));
    return often
      ? refuse(c, 429, "Too many wrong codes; wait a minute.")
      : refuse(c, 403, "That is not the code.");
  };
  app.post("/paddock/hello", async (c) => {
    const fields = await guessed(c, "code", place.code);
    if (fields instanceof Response) return fields;
    const { event } = day;
    return c.json({ day: event?.name ?? "", drivers: event?.drivers ?? [] });
  });
  app.post("/paddock/join", async (c) => {
    const fields = await guessed(c, "code", place.code);
    if (fields instanceof Response) return fields;
    const name = asName(fields.name);
    if (name === undefined) return refuse(c, 400, "A name is needed, of 80 letters at most.");
    const known = day.phones.byToken(tokenOf(c));
    const joined = await day.join(name, new Date().toISOString(), known);
    if (joined === undefined) return refuse(c, 409, "The day has no room for more phones.");
    return c.json({ name: joined.phone.name, token: joined.token ?? tokenOf(c) });
  });
  app.post("/paddock/desk", async (c) => {
    const fields = await guessed(c, "secret", place.secret);
    return fields instanceof Response ? fields : c.json({ token: place.secret });
  });
}

/** Entries in, and out as events. */
function addFiling(app: Hono<Env>, day: PaddockDay, known: MiddlewareHandler<Env>): void {
  const streams = new Map<string, number>();
  app.use("/paddock/entries", known);
  app.post("/paddock/entries", async (c) => {
    const filer = c.get("filer");
    const { entries } = await fieldsOf(c);
    if (!Array.isArray(entries)) return refuse(c, 400, "entries must be a list.");
    if (filer !== "desk" && entries.length > MOST_ITEMS_OF_PHONE) return tooLarge(c);
    if (!day.hasRoom(filer)) return refuse(c, 409, "The day has no room for more entries.");
    return c.json(await day.file(filer, entries));
  });
  app.get("/paddock/entries", (c) => {
    const [filer, token] = [c.get("filer"), tokenOf(c)];
    const key = filer === "desk" ? `desk ${addressOf(c)}` : filer.id;
    const count = streams.get(key) ?? 0;
    if (count >= MOST_STREAMS) return refuse(c, 429, "Too many pages listen already.");
    const after = Math.max(0, Math.floor(Number(c.req.query("after") ?? 0)) || 0);
    streams.set(key, count + 1);
    return streamSSE(c, async (stream) => {
      const left = () => day.phones.byToken(token);
      try {
        await tellAll(
          stream,
          day,
          filer === "desk" ? () => filer : left,
          Math.min(after, day.filed.length),
        );
      } finally {
        streams.set(key, (streams.get(key) ?? 1) - 1);
      }
    });
  });
}

/** What only the desk may. */
function addDesk(
  app: Hono<Env>,
  day: PaddockDay,
  place: Place,
  known: MiddlewareHandler<Env>,
): void {
  const deskOnly: MiddlewareHandler<Env> = async (c, next) =>
    c.get("filer") === "desk" ? next() : refuse(c, 403, "Only the desk may do that.");
  for (const path of ["/paddock/clock", "/paddock/place", "/paddock/phones/*"])
    app.use(path, known, deskOnly);
  app.get("/paddock/place", (c) => {
    const { code, address, network } = place;
    const joins = network && {
      network: { name: network.name, code: networkCode(network.name, network.password) },
    };
    return c.json({ code, address, ...joins });
  });
  app.post("/paddock/clock", async (c) => {
    const clock = asClock((await fieldsOf(c)).clock);
    if (clock === undefined) return refuse(c, 400, "clock must be a clock.");
    const told = Math.max(Date.now(), (day.clock?.told ?? 0) + 1);
    await day.setClock({ clock, told });
    return c.json({ told });
  });
  app.post("/paddock/phones/:id", async (c) => {
    const phone = day.phones.byId(c.req.param("id") ?? "");
    const { name: given, removed } = await fieldsOf(c);
    const name = asName(given);
    if (phone === undefined || (name === undefined && removed !== true))
      return refuse(c, 400, "A phone of the day, and its new name or removed, are needed.");
    await day.putPhone(removed === true ? { ...phone, removed } : renamed(phone, name ?? ""));
    return c.json({});
  });
}
