// Where the built core stands: the build says so by BAIZE_CORE_WASM; by hand it
// is the newest of the build folders.
import { existsSync, readdirSync, statSync } from "node:fs";
import { join, resolve } from "node:path";

const builds = resolve(__dirname, "../../../build");

function newest(): string | undefined {
  if (!existsSync(builds)) return undefined;
  const built = readdirSync(builds)
    .map((preset) => join(builds, preset, "surfaces/wasm/core.wasm"))
    .filter((path) => existsSync(path));
  return built.sort((a, b) => statSync(b).mtimeMs - statSync(a).mtimeMs)[0];
}

/** The module's path; without a build a path that does not exist. */
export function coreModule(): string {
  return process.env.BAIZE_CORE_WASM ?? newest() ?? join(builds, "dev/surfaces/wasm/core.wasm");
}
