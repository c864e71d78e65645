// Writes src/field/core_types.ts from surfaces/wasm/functions.json; with
// --check only says whether it is up to date.
import { readFile, writeFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import openapiTS, { astToString } from "openapi-typescript";

const described = JSON.parse(await readFile(new URL("../../wasm/functions.json", import.meta.url), "utf8"));
const target = fileURLToPath(new URL("../src/field/core_types.ts", import.meta.url));
const head = "// Written by `npm run types` from surfaces/wasm/functions.json. Change that, not this.\n";

/** "place_of_mark" is PlaceOfMark. */
const titled = (name) => name.replace(/(^|_)([a-z])/g, (_, __, letter) => letter.toUpperCase());

/** References point into components; units stand in the comments. */
function adapted(schema) {
  if (Array.isArray(schema)) return schema.map(adapted);
  if (schema === null || typeof schema !== "object") return schema;
  const changed = Object.fromEntries(Object.entries(schema).map(([key, value]) => [key, adapted(value)]));
  if (typeof changed.$ref === "string") changed.$ref = changed.$ref.replace("#/", "#/components/");
  if (typeof changed.unit === "string") {
    changed.description = changed.description ? `${changed.description}; ${changed.unit}` : changed.unit;
  }
  return changed;
}

const schemas = { ...described.schemas };
for (const [name, { takes, gives }] of Object.entries(described.functions)) {
  schemas[`${titled(name)}Takes`] = takes;
  schemas[`${titled(name)}Gives`] = gives;
}
const types = astToString(
  await openapiTS({
    openapi: "3.1.0",
    info: { title: "core", version: "1" },
    paths: {},
    components: { schemas: adapted(schemas) },
  }),
)
  .replace(/^export type (paths|webhooks|\$defs|operations) = Record<string, never>;\n/gm, "")
  .replace("export interface components {", "interface components {");

const names = Object.keys(schemas).sort();
const short = names.map((name) => `export type ${name} = components["schemas"]["${name}"];\n`).join("");
const functions = Object.entries(described.functions)
  .map(([name, { does }]) => `  /** ${does} */\n  ${name}: { takes: ${titled(name)}Takes; gives: ${titled(name)}Gives };\n`)
  .join("");
const wanted = `${head}${types}\n${short}\nexport interface Functions {\n${functions}}\n`;

if (process.argv.includes("--check")) {
  const found = await readFile(target, "utf8").catch(() => "");
  if (found !== wanted) {
    console.error("src/field/core_types.ts does not follow surfaces/wasm/functions.json: run npm run types");
    process.exit(1);
  }
} else {
  await writeFile(target, wanted);
}
