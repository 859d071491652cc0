#!/bin/sh
# How long a check takes and how much memory, as ratios within one run on one machine. Prints a table; nothing
# fails by being slow. Needs what sh tests/run.sh installs.
set -eu
top=$(cd "$(dirname "$0")/../.." && pwd)
build=${BENCH_BUILD:-$top/build/bench}
bench=$top/tests/bench
lua=$(command -v lua5.4)
cmake -S "$top" -B "$build" -DCMAKE_BUILD_TYPE=Release >/dev/null
cmake --build "$build" -j "$(nproc)" --target plumbrule >/dev/null
flags="-std=c17 -O2 -Wall -Wextra -D_GNU_SOURCE"
libraries=$(pkg-config --cflags --libs yaml-0.1 lua5.4 jansson libxml-2.0)
# shellcheck disable=SC2086
{
    # The empty program keeps libraries that it never calls.
    cc $flags "$bench/empty.c" -o "$build/bench_empty" -Wl,--no-as-needed $libraries -lgeos_c -lm
    cc $flags "$bench/whole.c" -o "$build/bench_whole"
    cc $flags -I"$top/include" "$bench/review.c" -o "$build/bench_review" \
        -Wl,--start-group "$build"/libroom_*.a -Wl,--end-group $libraries -lgeos_c -lm
    cc $flags -I"$top/include" -I"$top/core/base" -I"$top/core/measure" -I"$top/core/design" -I"$top/core/calc" \
        "$bench/roof.c" -o "$build/bench_roof" -Wl,--wrap=calculator_run \
        -Wl,--start-group "$build"/libroom_*.a -Wl,--end-group $libraries -lgeos_c -lm
}
cd "$top/samples"
design=quill-hollow/standing.yaml
catalogues=
for name in $(sed -n 's/^catalogue: \[\(.*\)\]/\1/p' $design | tr -d ,); do
    catalogues="$catalogues catalogue/$name.yaml"
done

echo "\$ plumbrule check $design --book marrow-bay   (in samples/, Release, $(uname -m), $(nproc) processors)"
echo "Whole runs, process start to exit, medians of interleaved rounds:"
"$build/bench_whole" "$build/bench_empty" "$lua" "$build/plumbrule" check $design --book marrow-bay
echo "With the HTML report and all drawings (aim: at most 50 ms for the whole run):"
"$build/bench_whole" "$build/bench_empty" "$lua" "$build/plumbrule" check $design --book marrow-bay --format html
echo "In one warm process, medians of interleaved rounds:"
# shellcheck disable=SC2086
"$build/bench_review" $design marrow-bay catalogue $catalogues
echo "A roof of six planes with 40 modules, under the codes of the roof alone, in one warm process:"
"$build/bench_roof" ../tests/bench/forty.yaml roof-alone "$bench/books" catalogue
