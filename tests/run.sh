#!/bin/sh
# Installs what is needed, builds, and runs every test through ctest: the usual build first, then the unit
# tests once more with sanitizers.
set -eu
top=$(cd "$(dirname "$0")/.." && pwd)
. "$top/.ci/packages.sh"
# shellcheck disable=SC2086
sh "$top/.ci/install.sh" $BUILD_PACKAGES $TEST_PACKAGES
jobs=$(nproc)
cmake -S "$top" -B "$top/build" -DPLUMBRULE_TESTS=ON
cmake --build "$top/build" -j "$jobs"
cmake -S "$top" -B "$top/build/sanitized" -DPLUMBRULE_TESTS=ON -DCMAKE_BUILD_TYPE=Debug \
    -DCMAKE_C_COMPILER=clang -DPLUMBRULE_SANITIZE=fuzzer-no-link,address,undefined
cmake --build "$top/build/sanitized" -j "$jobs"
ASAN_OPTIONS=detect_leaks=1 ctest --test-dir "$top/build/sanitized" --output-on-failure -j "$jobs" -LE slow
ctest --test-dir "$top/build" --output-on-failure -j "$jobs"
