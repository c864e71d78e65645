// Where the built core stands: the build says so in the environment; by hand it
// is in the newest of the build folders.
import { existsSync, readdirSync, statSync } from "node:fs";
import { join, resolve } from "node:path";

const builds = resolve(__dirname, "../../../build");

function newest(part: string): string {
  const presets = existsSync(builds) ? readdirSync(builds) : [];
  const built = presets.map((preset) => join(builds, preset, part)).filter((path) => existsSync(path));
  built.sort((a, b) => statSync(b).mtimeMs - statSync(a).mtimeMs);
  return built[0] ?? join(builds, "dev", part);
}

/** The WebAssembly module. */
export function coreModule(): string {
  return process.env.BAIZE_CORE_WASM ?? newest("surfaces/wasm/core.wasm");
}

/** The program that prints cases with the native library's answers. */
export function coreCases(): string {
  return process.env.BAIZE_CORE_CASES ?? newest("tests/phone_cases");
}
