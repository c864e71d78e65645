# Sourced by ./baize and ./check: installs what is missing and builds.
# Works as root, or as a user with sudo.

# Checkouts in different folders, and another root on the same machine, share
# what the compiler cache holds.
export CCACHE_BASEDIR=$root CCACHE_NOHASHDIR=1 CCACHE_COMPILERCHECK=content

say() { printf '%s\n' "$*" >&2; }

as_root() {
  if [ "$(id -u)" -eq 0 ]; then
    "$@"
  elif command -v sudo >/dev/null 2>&1; then
    sudo "$@"
  else
    say "Packages are missing and this user may not install them: run once as root, or install sudo."
    return 1
  fi
}

# missing_packages SECTION...: packages of these sections that are not there.
missing_packages() {
  local section="" name unless wanted
  while read -r name unless; do
    case "$name" in
      '' | '#'*) continue ;;
      '['*']') section="${name//[\[\]]/}"; continue ;;
    esac
    for wanted in "$@"; do
      [ "$wanted" = "$section" ] || continue
      if [ -n "$unless" ] && command -v "$unless" >/dev/null 2>&1; then continue; fi
      dpkg-query -W -f='${Status}' "$name" 2>/dev/null | grep -q '^install ok installed$' ||
        printf '%s\n' "$name"
    done
  done <"$root/packages.txt"
}

install_packages() {
  local missing
  missing=$(missing_packages "$@")
  [ -n "$missing" ] || return 0
  say "Installing from Debian: $(printf '%s' "$missing" | tr '\n' ' ')"
  as_root apt-get update -qq
  # shellcheck disable=SC2086 # one word per package is meant
  as_root env DEBIAN_FRONTEND=noninteractive \
    apt-get install -y -qq --no-install-recommends $missing >&2
}

# build PRESET [TARGET...]
build() {
  local preset=$1
  shift
  cmake --preset "$preset" -S "$root" >"$root/build/$preset.log" 2>&1 || {
    cat "$root/build/$preset.log" >&2
    return 1
  }
  if [ $# -gt 0 ]; then
    cmake --build "$root/build/$preset" --target "$@"
  else
    cmake --build "$root/build/$preset"
  fi
}
