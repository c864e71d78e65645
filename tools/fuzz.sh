#!/usr/bin/env bash
# Builds the fuzz targets and runs each for SECONDS (default 600) from its corpus.
set -euo pipefail
seconds=${1:-600}
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
cd "$root"
. tools/prepare.sh
mkdir -p build
build fuzz fuzz_targets
for program in build/fuzz/tests/fuzz/*_fuzz; do
  [ -x "$program" ] || continue
  name=$(basename "$program")
  found=build/fuzz/found/$name
  mkdir -p "$found"
  corpus=tests/fuzz/corpus/${name%_fuzz}
  printf '%s: ' "$name"
  if ! "$program" -max_total_time="$seconds" -timeout=10 -rss_limit_mb=2048 \
    -artifact_prefix="$found/" "$found" "$corpus" >"build/fuzz/$name.log" 2>&1; then
    tail -n 40 "build/fuzz/$name.log"
    exit 1
  fi
  grep -E '^Done' "build/fuzz/$name.log"
done
