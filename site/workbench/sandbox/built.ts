/** Put in by the build: the texts that run in the sandbox, and the hash by which policies know the frame's. */
declare const RUNTIME: string;
declare const RELAY: string;
declare const RELAY_HASH: string;

export const runtime = RUNTIME;
export const relay = RELAY;
export const relayHash = RELAY_HASH;
