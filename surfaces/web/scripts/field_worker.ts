import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { transformWithEsbuild, type Plugin } from "vite";

/** Copied as they are from public/field. */
const beside = ["raw.html", "raw.js", "manifest.webmanifest", "../icon.svg"];

/** Writes field/sw.js, which knows every file of this edition of the field page. */
export function fieldWorker(): Plugin {
  const sources = ["sw.js", "send.js"].map((name) => resolve(__dirname, "../src/field/worker", name));
  const publicFiles = resolve(__dirname, "../public/field");
  return {
    name: "baize-field-worker",
    enforce: "post",
    generateBundle: {
      order: "post",
      async handler(_options, bundle) {
        const built = Object.keys(bundle).filter((name) => name !== "field/index.html").sort();
        const files = ["./", ...built.map((name) => (name.startsWith("field/") ? name.slice(6) : `../${name}`)), ...beside];
        const edition = createHash("sha256");
        for (const name of Object.keys(bundle).sort()) {
          const part = bundle[name];
          edition.update(name).update(part?.type === "chunk" ? part.code : (part?.source ?? ""));
        }
        for (const name of beside) edition.update(readFileSync(resolve(publicFiles, name)));
        const whole = sources.map((source) => readFileSync(source, "utf8")).join("");
        const { code: text } = await transformWithEsbuild(whole, "sw.js", { minifyWhitespace: true, minifySyntax: true, legalComments: "none" });
        edition.update(text);
        this.emitFile({
          type: "asset", fileName: "field/sw.js",
          source: text.replace("BAIZE_FILES", JSON.stringify(files)).replace("baize-field BAIZE_EDITION", `baize-field ${edition.digest("hex").slice(0, 16)}`),
        });
      },
    },
  };
}
