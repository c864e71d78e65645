#!/usr/bin/env bash
# clang-tidy-19 over every source of the program (not its tests), two at a time.
# A source is read again only when it, a header that it includes or the rules have
# changed; what it includes is known from its last build. The analyzer follows at most
# TIDY_STATES states of a function (clang's own limit is 225000, five times the wait).
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
build=build/dev
export TIDY_STATES=${TIDY_STATES:-20000}
state=build/tidy-clean/$TIDY_STATES
mkdir -p "$state"

# Findings are looked for in our own declarations only (see the source).
scope=build/tidy-clean/tidy_scope.so
if [ tools/tidy_scope.cpp -nt "$scope" ]; then
  g++ -std=c++17 -O1 -fPIC -shared -fno-rtti -isystem /usr/lib/llvm-19/include \
    tools/tidy_scope.cpp -o "$scope"
fi

# "source header header ...", a line each, of our own files.
includes=$state/includes
ninja -C "$build" -t deps | awk '
  /^[^ ]/ { if (line != "") print line; line = ""; next }
  NF && sub(/^\.\.\/\.\.\//, "", $1) { line = line (line == "" ? "" : " ") $1 }
  END { if (line != "") print line }' | sort -u >"$includes"

# Without the headers that g++ has compiled ahead: each source must include its own.
commands=build/tidy-clean/commands
mkdir -p "$commands"
sed -E 's/-Winvalid-pch -include [^ ]*cmake_pch\.hxx//' "$build/compile_commands.json" \
  >"$commands/compile_commands.json"

tidy_one() {
  local source=$1 read stamp
  read=$(awk -v source="$source" '$1 == source { print; exit }' "$includes")
  # Never built: any header may matter.
  [ -n "$read" ] || read="$source $(git ls-files -- '*.h' | tr '\n' ' ')"
  # shellcheck disable=SC2086 # one word per file is meant
  stamp="$state/$(cat .clang-tidy tools/tidy_scope.cpp $read | sha256sum | cut -c1-32)"
  [ -e "$stamp" ] && return 0
  clang-tidy-19 --load="$scope" -p "$commands" --quiet --extra-arg=-Wno-unknown-warning-option \
    --extra-arg=-Xclang --extra-arg=-analyzer-config \
    --extra-arg=-Xclang --extra-arg="max-nodes=$TIDY_STATES" "$source" 2>"$state/errors.$$" || {
    printf 'clang-tidy: %s is not clean\n' "$source"
    grep -v 'warnings generated' "$state/errors.$$" || true
    return 1
  }
  rm -f "$state/errors.$$"
  : >"$stamp"
}
export -f tidy_one
export commands state includes scope
git ls-files --cached --others --exclude-standard -- 'core/*.cpp' 'services/*.cpp' \
  'adapters/*.cpp' 'surfaces/*.cpp' 'apps/*.cpp' 'demo/*.cpp' >"$state/sources"
# In place of this shell, so that whoever ends it ends the reading too.
exec xargs -a "$state/sources" -P "$(nproc)" -I{} bash -c 'tidy_one "$1"' _ {}
