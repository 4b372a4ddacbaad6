import { networkInterfaces } from "node:os";

/** Addresses under which other devices of a network find this machine, IPv4; home and hotspot networks first. */
export function addressesHere(): string[] {
  const all = Object.values(networkInterfaces()).flatMap((one) => one ?? []);
  const outside = all.filter(({ family, internal }) => family === "IPv4" && !internal);
  const isPrivate = (address: string) => /^(10|192\.168|172\.(1[6-9]|2\d|3[01]))\./.test(address);
  return outside
    .map(({ address }) => address)
    .sort((a, b) => Number(isPrivate(b)) - Number(isPrivate(a)));
}

/** What a browser may call this machine by when it listens there. */
export function hostsOf(addresses: readonly string[], port: number, secure: boolean): Set<string> {
  const names = [...new Set([...addresses, "localhost", "127.0.0.1"])];
  const usual = port === (secure ? 443 : 80);
  return new Set(names.flatMap((name) => [`${name}:${port}`, ...(usual ? [name] : [])]));
}

/** What a phone's camera makes of a network: it offers to join it. – convention of camera apps, from memory */
export function networkCode(name: string, password: string): string {
  const safe = (text: string) => text.replace(/[\\;,:"]/g, "\\$&");
  const kind = password === "" ? "T:nopass" : `T:WPA;P:${safe(password)}`;
  return `WIFI:S:${safe(name)};${kind};;`;
}
