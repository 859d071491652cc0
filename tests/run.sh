#!/bin/sh
# Installs what is needed, builds, and runs every test through ctest: the usual build with all tests first,
# then once more, with sanitizers, those that do not merely repeat the program's answers (and end in a minute or two:
# faults_places looks up the stack at each piece of memory, which takes too long there).
set -eu
top=$(cd "$(dirname "$0")/.." && pwd)
. "$top/.ci/packages.sh"
# shellcheck disable=SC2086
sh "$top/.ci/install.sh" $BUILD_PACKAGES $TEST_PACKAGES
jobs=$(nproc)
cmake -S "$top" -B "$top/build"
cmake --build "$top/build" -j "$jobs"
ctest --test-dir "$top/build" --output-on-failure -j "$jobs"
cmake -S "$top" -B "$top/build/sanitized" -DCMAKE_BUILD_TYPE=Debug \
    -DCMAKE_C_COMPILER=clang -DPLUMBRULE_SANITIZE=fuzzer-no-link,address,undefined
cmake --build "$top/build/sanitized" -j "$jobs"
ASAN_OPTIONS=detect_leaks=1 ctest --test-dir "$top/build/sanitized" --output-on-failure -j "$jobs" \
    -E "^faults_places" -R "^(unit_|fuzz_|fault|shell_|lua_bad|lua_samples|lua_prove|lua_new|lua_compare|lua_signoff|lua_draw)"
