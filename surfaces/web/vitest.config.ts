import { defineConfig } from "vitest/config";
import { coreModule } from "./scripts/core_module";

export default defineConfig({
  esbuild: { jsx: "automatic", jsxImportSource: "preact" },
  resolve: { alias: [{ find: /^baize-core\.wasm/, replacement: coreModule() }] },
  server: { fs: { allow: [".", "../../build"] } },
  test: { include: ["test/**/*.test.ts"], setupFiles: ["test/node_18.ts"], environment: "node" },
});
