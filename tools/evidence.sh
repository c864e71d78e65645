#!/usr/bin/env bash
# Writes the pages of docs/evidence anew.
#   tools/evidence.sh [WORLDS] [STUDY...]    1000 worlds a row, all studies
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
cd "$root"
. tools/prepare.sh
worlds=${1:-1000}
shift || true
mkdir -p build docs/evidence
build release evidence
program=build/release/evidence/evidence
if [ $# -eq 0 ]; then
  # Its usage line ends with the names of the studies.
  read -ra studies <<<"$("$program" 2>&1 | sed 's/.*studies: *//')" || true
  set -- "${studies[@]}"
fi
for study in "$@"; do
  printf '%s\n' "$study" >&2
  "$program" "$worlds" "$study" >"docs/evidence/$study.md.part"
  mv "docs/evidence/$study.md.part" "docs/evidence/$study.md"
done
