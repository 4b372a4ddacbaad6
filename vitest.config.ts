import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

export default defineConfig({
  resolve: { alias: { "@rollbook/lib": here("lib/index.ts") } },
  test: { include: ["test/**/*.test.ts"] },
});
