/** Loads, inside a worker, the physics that the page itself has loaded by a tag. */
interface InWorker {
  importScripts(file: string): void;
  rollbook?: object;
}

const here = globalThis as unknown as InWorker;
here.rollbook = {};
here.importScripts("physics.js");
