import { defineConfig } from "vitest/config";
import { coreModule } from "./scripts/core_module";

export default defineConfig({
  esbuild: { jsx: "automatic", jsxImportSource: "preact" },
  resolve: { alias: { "baize-core.wasm": coreModule() } },
  test: { include: ["test/**/*.test.ts"], environment: "node" },
});
