#!/usr/bin/env bash
# clang-tidy-19 over every source of the program (not its tests), two at a time.
# A source is read again only when it, a header or the rules have changed.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
build=build/dev
state=build/tidy-clean
mkdir -p "$state"
rules=$(git ls-files --cached --others --exclude-standard -- '*.h' .clang-tidy | sort | xargs cat | sha256sum | cut -c1-16)

tidy_one() {
  local source=$1 stamp
  stamp="$state/$( (printf '%s' "$rules"; cat "$source") | sha256sum | cut -c1-32)"
  [ -e "$stamp" ] && return 0
  clang-tidy-19 -p "$build" --quiet --extra-arg=-Wno-unknown-warning-option "$source" 2>/dev/null || {
    printf 'clang-tidy: %s is not clean\n' "$source"
    return 1
  }
  : >"$stamp"
}
export -f tidy_one
export build state rules
git ls-files --cached --others --exclude-standard -- 'core/*.cpp' 'services/*.cpp' 'adapters/*.cpp' \
  'surfaces/*.cpp' 'apps/*.cpp' 'demo/*.cpp' |
  xargs -P "$(nproc)" -I{} bash -c 'tidy_one "$1"' _ {}
