#!/usr/bin/env bash
# Lays out every C++ file; with --check only says which are not laid out.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
mapfile -t files < <(git ls-files --cached --others --exclude-standard -- '*.h' '*.cpp')
if [ "${1:-}" = --check ]; then
  clang-format-19 --dry-run --Werror "${files[@]}"
else
  clang-format-19 -i "${files[@]}"
fi
