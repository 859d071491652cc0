#!/bin/sh
# What analysers say of core/: clang-tidy (.clang-tidy tells its checks), cppcheck, gcc's -fanalyzer; then threads under
# TSan and memory under valgrind. Installs what it needs; ends with 1 where any of them finds something.
# `analyse.sh tidy|cppcheck|analyzer|threads|valgrind…` runs only those.
set -eu
top=$(cd "$(dirname "$0")/.." && pwd)
. "$top/.ci/packages.sh"
# shellcheck disable=SC2086
sh "$top/.ci/install.sh" $BUILD_PACKAGES $TEST_PACKAGES
jobs=$(nproc)
build=$top/build/analyse
parts=${*:-tidy cppcheck analyzer threads valgrind}
failed=0
cd "$top"
mkdir -p "$build"
rm -f "$build"/*/CMakeCache.txt # a cache of another compiler's name would throw the flags below away
ends() {
    if [ "$2" -eq 0 ]; then echo "$1: clean"; else
        echo "$1: NOT clean" >&2
        failed=1
    fi
}

tidy() { # one file a process: its analyser forgets va_start after the first
    cmake -S . -B "$build/clang" -DCMAKE_C_COMPILER=clang -DCMAKE_BUILD_TYPE=Debug >/dev/null
    find core -name '*.c' -print0 | sort -z |
        xargs -0 -n 1 -P "$jobs" clang-tidy -p "$build/clang" --quiet 2>/dev/null
}

check() {
    rooms=
    for room in core/*/; do rooms="$rooms -I $room"; done
    # shellcheck disable=SC2086
    cppcheck --enable=warning,performance,portability --inline-suppr --std=c11 -j "$jobs" --quiet --error-exitcode=1 \
        --suppress=missingIncludeSystem -I include $rooms core
}

analyzer() {
    cmake -S . -B "$build/gcc" -DCMAKE_C_COMPILER=gcc -DCMAKE_BUILD_TYPE=Debug \
        -DCMAKE_C_FLAGS="-fanalyzer -Wno-analyzer-too-complex" >/dev/null
    cmake --build "$build/gcc" -j "$jobs" --target plumbrule -- -k
}

# --jobs works by processes; threads are those of programs that embed the library: unit_review runs two.
# unit_room_hostile is one thread that calls a million times.
threads() {
    cmake -S . -B "$build/tsan" -DCMAKE_C_COMPILER=clang -DCMAKE_BUILD_TYPE=Debug -DPLUMBRULE_SANITIZE=thread >/dev/null
    cmake --build "$build/tsan" -j "$jobs" >/dev/null
    found=0
    TSAN_OPTIONS=allocator_may_return_null=1 ctest --test-dir "$build/tsan" -j "$jobs" --timeout 600 --output-on-failure \
        -R '^(unit_|shell_batch)' -E 'room_(memory|hostile)' >"$build/threads.log" 2>&1 || found=1
    tail -n 15 "$build/threads.log"
    return $found
}

# Without unit_room and unit_room_hostile, which run rules to the end of their budgets (one of them takes over two minutes
# here; the sanitized run has them), and without the tests whose own allocators hide valgrind's.
memory() {
    cmake -S . -B "$build/plain" -DCMAKE_C_COMPILER=gcc -DCMAKE_BUILD_TYPE=Debug >/dev/null
    cmake --build "$build/plain" -j "$jobs" >/dev/null
    bad=0
    check_leaks="valgrind -q --error-exitcode=99 --leak-check=full --errors-for-leak-kinds=definite,indirect"
    for test in "$build"/plain/tests/unit_*; do
        case $test in *_room | *_room_hostile | *_room_memory | *_books_memory) continue ;; esac
        option=
        case $test in *_base | *_arena) option=--no-limit ;; esac
        # shellcheck disable=SC2086
        $check_leaks "$test" $option >"$build/valgrind.log" 2>&1 || { bad=1; echo "$test"; grep '^==' "$build/valgrind.log"; }
    done
    for design in samples/*/*.yaml; do
        case $design in samples/catalogue/*) continue ;; esac
        end=0
        $check_leaks "$build/plain/plumbrule" check "$design" --book marrow-bay --format html >/dev/null \
            2>"$build/valgrind.log" || end=$?
        [ "$end" -lt 64 ] || { bad=1; echo "$design ends with $end"; cat "$build/valgrind.log"; }
    done
    return $bad
}

for part in $parts; do
    end=0
    case $part in
    tidy) tidy || end=$? ;;
    cppcheck) check || end=$? ;;
    analyzer) analyzer >"$build/analyzer.log" 2>&1 || { end=1; grep -E 'error|warning' "$build/analyzer.log" >&2; } ;;
    threads) threads || end=$? ;;
    valgrind) memory || end=$? ;;
    *) echo "there is no part $part" >&2; end=1 ;;
    esac
    ends "$part" "$end"
done
exit $failed
