/** The entry of the script with the view library, which pages that are drawn with it load before their own. */
import * as signals from "@preact/signals";
import * as preact from "preact";
import * as hooks from "preact/hooks";
import * as jsx from "preact/jsx-runtime";

const { rollbook } = globalThis as unknown as { rollbook: Record<string, unknown> };
Object.assign(rollbook, { views: { preact, hooks, jsx, signals } });
