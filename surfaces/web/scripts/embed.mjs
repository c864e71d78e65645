// embed.mjs DIST OUT: writes OUT/table.cpp and OUT/bytes.S, which put every
// file of DIST inside the program.
import { createHash } from "node:crypto";
import { readdir, readFile, writeFile } from "node:fs/promises";
import { extname, join, relative, resolve } from "node:path";

const types = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".webmanifest": "application/manifest+json",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".woff2": "font/woff2",
  ".wasm": "application/wasm",
};

async function filesUnder(folder) {
  const found = [];
  for (const entry of await readdir(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) found.push(...(await filesUnder(path)));
    else found.push(path);
  }
  return found;
}

const [dist, out] = process.argv.slice(2).map((path) => resolve(path));
const files = (await filesUnder(dist))
  .map((file) => ({ file, path: `/${relative(dist, file)}` }))
  .sort((a, b) => (a.path < b.path ? -1 : 1));

let bytes = '    .section .rodata.baize_assets,"a",@progbits\n';
let declared = "";
let rows = "";
for (const [place, { file, path }] of files.entries()) {
  const type = types[extname(path)];
  if (!type) throw new Error(`${path}: its content type is not known to scripts/embed.mjs`);
  const hash = createHash("sha256").update(await readFile(file)).digest("hex").slice(0, 16);
  const name = `baize_asset_${place}`;
  bytes += `    .global ${name}\n    .global ${name}_end\n${name}:\n    .incbin "${file}"\n${name}_end:\n`;
  declared += `extern const char ${name}[];\nextern const char ${name}_end[];\n`;
  rows += `      Asset{"${path}", "${type}", {${name}, static_cast<std::size_t>(${name}_end - ${name})}, "\\"${hash}\\""},\n`;
}
bytes += '    .section .note.GNU-stack,"",@progbits\n';

await writeFile(join(out, "bytes.S"), bytes);
await writeFile(
  join(out, "table.cpp"),
  `#include "table.h"

#include <array>
#include <cstddef>

extern "C" {
${declared}}

namespace baize::assets {

std::span<const Asset> table() {
  static const std::array<Asset, ${files.length}> files{
${rows}  };
  return files;
}

} // namespace baize::assets
`,
);
