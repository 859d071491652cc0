#!/bin/sh
# Fuzzes each target for MINUTES (5 if not given), two processes each, and prints executions and what was reached.
# A crash is left in BUILD/tests/fuzz/TARGET-crash-…: make it small with -minimize_crash=1, then put it into
# tests/fuzz/crashes/TARGET/ under a name that says what it was. `long.sh MINUTES TARGET…` runs only those.
set -eu
top=$(cd "$(dirname "$0")/../.." && pwd)
build=${FUZZ_BUILD:-$top/build/fuzz}
minutes=${1:-5}
[ $# -gt 0 ] && shift
targets=${*:-quantity yaml design book rule whole}
cmake -S "$top" -B "$build" -DCMAKE_BUILD_TYPE=Debug -DCMAKE_C_FLAGS_DEBUG="-O1 -g" -DCMAKE_C_COMPILER=clang \
    -DPLUMBRULE_SANITIZE=fuzzer-no-link,address,undefined >/dev/null
for target in $targets; do
    cmake --build "$build" -j "$(nproc)" --target "fuzz_$target" >/dev/null
done
cd "$build/tests/fuzz"
failed=0
for target in $targets; do
    seeds=
    for folder in "$top/tests/fuzz/seeds/$target" "$top/tests/fuzz/crashes/$target" "single_$target"; do
        [ -d "$folder" ] && seeds="$seeds $folder"
    done
    case $target in
    design | yaml) seeds="$seeds $top/samples/quill-hollow $top/samples/three-roofs" ;;
    rule) seeds="$seeds $top/tests/room/attacks $top/rules/codes/irc $top/rules/codes/nec" ;;
    esac
    # shellcheck disable=SC2086
    "./fuzz_$target" -fork=2 -ignore_crashes=0 -max_total_time=$((minutes * 60)) -timeout=20 -rss_limit_mb=2048 \
        -max_len=20000 -dict="$top/tests/fuzz/$target.dict" -artifact_prefix="$PWD/$target-" "found_$target" $seeds \
        >"$target.log" 2>&1 || { failed=1; tail -n 40 "$target.log"; }
    rm -rf /dev/shm/plumbrule-fuzz-*
    # Over all that was found, once: edges reached of all there are.
    # shellcheck disable=SC2086
    "./fuzz_$target" -runs=0 "found_$target" $seeds >"$target.reached" 2>&1 || failed=1
    edges=$(sed -n 's/.*(\([0-9]*\) inline 8-bit counters).*/\1/p' "$target.reached" | head -n 1)
    reached=$(sed -n 's/.* cov: \([0-9]*\) .*/\1/p' "$target.reached" | tail -n 1)
    runs=$(sed -n 's/^#\([0-9]*\): cov.*/\1/p' "$target.log" | tail -n 1)
    echo "$target: ${runs:-0} runs, ${reached:-?} of ${edges:-?} edges, $(ls "found_$target" | wc -l) inputs kept"
done
exit $failed
