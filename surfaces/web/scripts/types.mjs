// Writes src/api/types.ts from surfaces/api/openapi.yaml; with --check only
// says whether it is up to date.
import { readFile, writeFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import openapiTS, { astToString } from "openapi-typescript";

const contract = new URL("../../api/openapi.yaml", import.meta.url);
const target = fileURLToPath(new URL("../src/api/types.ts", import.meta.url));
const head = "// Written by `npm run types` from surfaces/api/openapi.yaml. Change that, not this.\n";
const wanted = head + astToString(await openapiTS(contract));

if (process.argv.includes("--check")) {
  const found = await readFile(target, "utf8").catch(() => "");
  if (found !== wanted) {
    console.error("src/api/types.ts does not follow surfaces/api/openapi.yaml: run npm run types");
    process.exit(1);
  }
} else {
  await writeFile(target, wanted);
}
