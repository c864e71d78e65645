import { defineConfig } from "vite";
import { coreModule } from "./scripts/core_module";

// The pages that the server hands out. Assets are named by their content, so a
// browser may keep them for ever.
export default defineConfig({
  base: "./",
  esbuild: { jsx: "automatic", jsxImportSource: "preact" },
  resolve: { alias: [{ find: /^baize-core\.wasm/, replacement: coreModule() }] },
  build: { target: "es2021", assetsInlineLimit: 0, modulePreload: { polyfill: false } },
  server: {
    proxy: { "/api": process.env.BAIZE_URL ?? "http://127.0.0.1:8417" },
    fs: { allow: [".", "../../build"] },
  },
});
