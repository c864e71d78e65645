import { defineConfig } from "vitest/config";

export default defineConfig({
  esbuild: { jsx: "automatic", jsxImportSource: "preact" },
  test: { include: ["test/**/*.test.ts"], environment: "node" },
});
