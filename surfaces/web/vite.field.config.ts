import { defineConfig } from "vite";
import { coreModule } from "./scripts/core_module";
import { fieldWorker } from "./scripts/field_worker";

// The page used on the green, at /field/: small, with its own service worker,
// so that it opens without a network.
export default defineConfig({
  base: "./",
  esbuild: { jsx: "automatic", jsxImportSource: "preact" },
  resolve: { alias: [{ find: /^baize-core\.wasm/, replacement: coreModule() }] },
  plugins: [fieldWorker()],
  build: {
    target: "es2021",
    assetsDir: "field/assets",
    assetsInlineLimit: 0,
    modulePreload: false,
    emptyOutDir: false,
    copyPublicDir: false,
    rollupOptions: { input: "field/index.html" },
  },
});
