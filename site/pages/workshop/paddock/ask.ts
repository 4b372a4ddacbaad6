import { member } from "./place.js";

/** What the desk's machine answered; nothing where it did not. */
export interface Answer {
  readonly status: number;
  readonly fields: Readonly<Record<string, unknown>>;
}

const PATIENCE = 15_000; // ms

/** Asks the desk's machine; never throws. */
export async function ask(path: string, body?: object): Promise<Answer | undefined> {
  const { token } = member.now.peek() ?? {};
  try {
    const response = await fetch(`paddock/${path}`, {
      method: body === undefined ? "GET" : "POST",
      headers: {
        ...(body !== undefined && { "Content-Type": "application/json" }),
        ...(token !== undefined && { Authorization: `Bearer ${token}` }),
      },
      ...(body !== undefined && { body: JSON.stringify(body) }),
      cache: "no-store",
      signal: AbortSignal.timeout(PATIENCE),
    });
    const read: unknown = await response.json();
    const fields = typeof read === "object" && read !== null ? read : {};
    return { status: response.status, fields: fields as Answer["fields"] };
  } catch {
    return undefined;
  }
}
