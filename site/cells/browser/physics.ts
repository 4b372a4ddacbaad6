/** The entry of the script that pages beside the chapters load before their own. */
import * as physics from "@rollbook/lib";

const { rollbook } = globalThis as unknown as { rollbook: Record<string, unknown> };
Object.assign(rollbook, { physics });
