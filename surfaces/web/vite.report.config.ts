import { defineConfig } from "vite";
import { oneFile } from "./scripts/one_file";

// The report: the same pages in one file that opens without a server.
export default defineConfig({
  base: "./",
  esbuild: { jsx: "automatic", jsxImportSource: "preact" },
  plugins: [oneFile()],
  build: {
    target: "es2021",
    emptyOutDir: false,
    assetsInlineLimit: Number.MAX_SAFE_INTEGER,
    cssCodeSplit: false,
    modulePreload: false,
    rollupOptions: { input: "report.html", output: { inlineDynamicImports: true } },
  },
});
