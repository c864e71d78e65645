// module_size.mjs MODULE LIMIT: prints how large the core is as it travels to a
// phone; fails above LIMIT kB, or where the module asks anything of the page.
import { readFile } from "node:fs/promises";
import { gzipSync } from "node:zlib";

const [path, limit] = process.argv.slice(2);
const bytes = await readFile(path);
const packed = gzipSync(bytes, { level: 9 }).length;
const imports = WebAssembly.Module.imports(await WebAssembly.compile(bytes));
console.log(`${path}: ${bytes.length} bytes, ${packed} by gzip (at most ${limit} kB), ${imports.length} imports`);
if (packed > Number(limit) * 1000) {
  console.error(`The core is larger than ${limit} kB.`);
  process.exitCode = 1;
}
for (const { module, name } of imports) {
  console.error(`It wants ${name} of ${module}, which no page gives.`);
  process.exitCode = 1;
}
