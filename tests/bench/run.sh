#!/bin/sh
# How long a check takes and how much memory, as ratios within one run on one machine, beside peers. Prints tables;
# nothing fails by being slow. Needs what sh tests/run.sh installs.
#     run.sh [--full | --memory] [--markdown]
# --full: batches of up to 100 000 designs, which takes hours. --memory: nothing but the memory of a batch of 100 000
# beside one of 1000, with the electrical book and two jobs, which takes some ten minutes. --markdown: the aims and what was measured as a table
# for docs/benchmark.md, and nothing else.
set -eu
top=$(cd "$(dirname "$0")/../.." && pwd)
build=${BENCH_BUILD:-$top/build/bench}
bench=$top/tests/bench
lua=$(command -v lua5.4)
extent= markdown=
for word in "$@"; do
    case $word in
    --full | --memory) extent=$word ;;
    --markdown) markdown=--markdown ;;
    *) echo "run.sh [--full | --memory] [--markdown]" >&2 && exit 64 ;;
    esac
done
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
cmake -S "$top" -B "$build" -DCMAKE_BUILD_TYPE=Release >/dev/null
cmake --build "$build" -j "$(nproc)" --target plumbrule >/dev/null
flags="-std=c17 -O2 -fno-plt -Wall -Wextra -D_GNU_SOURCE" # as the program is built
libraries="$(pkg-config --cflags --libs yaml-0.1 lua5.4 jansson libxml-2.0 nettle) -lgeos_c -lm"
rooms=
for room in base measure yaml design tables calc rulebook finding intake judge; do rooms="$rooms -I$top/core/$room"; done
whole="-Wl,--start-group $(echo "$build"/libroom_*.a) -Wl,--end-group"
# shellcheck disable=SC2086
{
    # The empty program keeps libraries that it never calls.
    cc $flags "$bench/empty.c" -o "$build/bench_empty" -Wl,--no-as-needed $libraries
    cc $flags "$bench/whole.c" -o "$build/bench_whole"
    cc $flags "$bench/watch.c" -o "$build/bench_watch"
    cc $flags "$bench/pair.c" -o "$build/bench_pair"
    cc $flags -I"$top/include" "$bench/review.c" -o "$build/bench_review" $whole $libraries
    cc $flags $rooms -I"$top/include" "$bench/roof.c" -o "$build/bench_roof" -Wl,--wrap=calculator_run $whole $libraries
    cc $flags $rooms "$bench"/ten/*.c -o "$build/bench_ten" $whole $libraries
}
cd "$top/samples"
design=quill-hollow/standing.yaml
catalogues=
for name in $(sed -n 's/^catalogue: \[\(.*\)\]/\1/p' $design | tr -d ,); do
    catalogues="$catalogues catalogue/$name.yaml"
done

measure() {
    if [ "$extent" = --memory ]; then
        "$lua" "$bench/growth.lua" "$top" "$build" "$folder" --memory
        return
    fi
    echo "\$ plumbrule check $design --book marrow-bay   (in samples/, Release, $(uname -m), $(nproc) processors)"
    echo "Whole runs, process start to exit, medians of interleaved rounds:"
    "$build/bench_whole" "$build/bench_empty" "$lua" "$build/plumbrule" check $design --book marrow-bay
    echo "With the HTML report and all drawings (aim: at most 50 ms for the whole run):"
    "$build/bench_whole" "$build/bench_empty" "$lua" "$build/plumbrule" check $design --book marrow-bay --format html
    # shellcheck disable=SC2086
    {
        echo "In one warm process, medians of interleaved rounds:"
        "$build/bench_review" $design marrow-bay catalogue $catalogues
        echo "Electrical rules alone, the same way (aim: at most 4 loops):"
        "$build/bench_review" $design "$bench/books/electrical" catalogue $catalogues
    }
    echo "Geometry and structure in a review of 40 modules on 6 planes:"
    "$build/bench_roof" "$bench/forty.yaml" roof-alone "$bench/books" catalogue
    echo "Ten checks written five ways, over designs in memory:"
    TOP=$top BUILD=$build FOLDER=$folder/ten COUNT=3000 sh "$bench/ten/run.sh" || return 1
    "$lua" "$bench/growth.lua" "$top" "$build" "$folder" $extent || return 1
}
# The end of what stands before a pipe would be lost; there a part that does not end well has to say so itself.
if [ -n "$markdown" ]; then
    measure >"$folder/log"
    "$lua" "$bench/aims.lua" "$folder/log" --markdown
else
    { measure || echo broken >"$folder/broken"; } | tee "$folder/log"
    [ ! -e "$folder/broken" ] || exit 1
    echo "Whole aims, and what this run measured:"
    "$lua" "$bench/aims.lua" "$folder/log"
fi
