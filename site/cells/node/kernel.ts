import type { Display } from "tslab";

interface Kernel {
  readonly require: (name: "tslab") => { readonly display: Display };
}

/** The running kernel's own display: a package beside it may bring a second tslab that no front end hears. */
export function kernelDisplay(): Display {
  const { __tslab__: kernel } = globalThis as { readonly __tslab__?: Kernel };
  if (!kernel) throw new Error("@rollbook/cells works in cells that the tslab kernel runs.");
  return kernel.require("tslab").display;
}

/** Whether a Jupyter front end started this kernel; the build of the course runs cells without one. */
export const hasFrontEnd = (): boolean =>
  process.argv.some((argument) => argument.startsWith("--config-path"));
