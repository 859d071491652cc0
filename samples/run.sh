#!/bin/sh
# Installs what is needed, builds, and holds three designs of one house against the rulebook of its town.
set -eu
top=$(cd "$(dirname "$0")/.." && pwd)
. "$top/.ci/packages.sh"
# shellcheck disable=SC2086
sh "$top/.ci/install.sh" $BUILD_PACKAGES
{
    cmake -S "$top" -B "$top/build" &&
        cmake --build "$top/build" -j "$(nproc)" --target plumbrule
} >"${TMPDIR:-/tmp}/plumbrule-build.log" 2>&1 || { cat "${TMPDIR:-/tmp}/plumbrule-build.log" >&2; exit 1; }
cd "$top/samples"
check() {
    printf '\n$ plumbrule check quill-hollow/%s --book marrow-bay\n\n' "$1"
    code=0
    "$top/build/plumbrule" check "quill-hollow/$1" --book marrow-bay || code=$?
    printf '\n(exit code %s)\n' "$code"
    [ "$code" -eq "$2" ] || { echo "expected exit code $2" >&2; exit 1; }
}
check unfinished.yaml 2 # some facts are not told yet
check failing.yaml 1    # three things do not stand
check standing.yaml 0   # the same house, put right
