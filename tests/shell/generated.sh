#!/bin/sh
# Designs made by a seed are designs: nothing in them is unknown, they differ, some stand in a rule where others fail;
# and a batch of them is the same for any number of workers.
set -u
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
failed=0
wrong() {
    echo "WRONG: $*" >&2
    failed=1
}
generate="lua5.4 $TOP/tests/bench/generate.lua"
$generate --seed 7 --count 200 --out "$work/a" || wrong "it ends with $?"
$generate --seed 7 --count 20 --out "$work/b" || wrong "it ends with $?"
$generate --seed 8 --count 20 --out "$work/c" || wrong "it ends with $?"
for design in $(head -n 20 "$work/a/list"); do
    cmp -s "$design" "$work/b/000/${design##*/}" || wrong "the same seed makes other designs"
    cmp -s "$design" "$work/c/000/${design##*/}" && wrong "another seed makes the same designs"
done
# No two are equal, though their titles, people, papers and permits did not count.
for design in $(cat "$work/a/list"); do
    sed '/^title/d;/^project:/,/^site:/d;/^papers:/,$d' "$design" | cksum
done | sort -u >"$work/sums"
[ "$(wc -l <"$work/sums")" = 200 ] || wrong "designs that are copies"
$generate --seed 7 --count 3 >"$work/stream"
for i in 1 2 3; do
    [ $i = 1 ] || echo ...
    cat "$work/a/000/design-00000$i.yaml"
done | cmp -s - "$work/stream" || wrong "to stdout it writes other designs"
$generate --count 3 --modules 0 2>/dev/null && wrong "no modules at all"
# All ways of building are among them.
for way in 'role: converter output' 'role: PV source' 'role: microinverter branch' 'role: combined branches' \
    'side: load side' 'side: supply side' 'shape: hip' 'shape: gable' 'shape: monoslope' 'valley'; do
    [ "$(grep -l "$way" -r "$work/a/000" | wc -l)" -ge 8 ] || wrong "hardly any design has $way"
done
head -n 120 "$work/a/list" >"$work/some"
for jobs in 1 3; do
    "$PLUMBRULE" check --from-list "$work/some" --jobs $jobs --book marrow-bay >"$work/lines$jobs"
    [ $? = 1 ] || wrong "the end with $jobs jobs"
done
cmp -s "$work/lines1" "$work/lines3" || wrong "three jobs write other bytes than one"
# What was judged before a design leaves nothing behind that would change it.
tac "$work/some" >"$work/other-way"
"$PLUMBRULE" check --from-list "$work/other-way" --jobs 1 --book marrow-bay | tac | cmp -s - "$work/lines1" ||
    wrong "the other way round a design comes out otherwise"
for n in 1 60 120; do
    "$PLUMBRULE" check "$(sed -n ${n}p "$work/some")" --format ndjson --book marrow-bay >"$work/alone"
    sed -n ${n}p "$work/lines1" | cmp -s - "$work/alone" || wrong "alone a design comes out otherwise than among many"
done
[ "$(grep -c '"problems":\[\]' "$work/lines1")" = 120 ] || wrong "designs with problems: $(grep -o '"problems":\[{[^}]*}' "$work/lines1" | head -n 3)"
LC_ALL=C grep -o '"rule":"[^"]*","title":"[^"]*","kind":"[a-zA-Z]*"' "$work/lines1" | sed 's/,"title.*,"kind/ kind/' | sort -u >"$work/kinds"
for kind in pass fail open; do
    [ "$(grep -c "kind\":\"$kind\"" "$work/kinds")" -ge 25 ] || wrong "fewer than 25 rules $kind anywhere"
done
# Designs as a whole come out all ways, too: counts stand near the beginning of a line.
cut -c 1-2000 "$work/lines1" | grep -o '"counts":{"fail":[0-9]*,"open":[0-9]*,"review":[0-9]*' | tr -c '0-9\n' ' ' |
    awk '{ ends[$1 > 0 ? "fail" : $2 > 0 ? "open" : $3 > 0 ? "review" : "pass"]++ }
        END { exit !(ends["fail"] && ends["open"] && ends["review"] && ends["pass"]) }' || wrong "designs do not end all ways"
# What the benchmark times stands, or it would end before it has measured anything.
stands() { (cd "$TOP/samples" && "$PLUMBRULE" check "$@" >"$work/stands") || wrong "$1 does not stand under $3"; }
stands "$TOP/tests/bench/forty.yaml" --book roof-alone --books "$TOP/tests/bench/books"
stands quill-hollow/standing.yaml --book "$TOP/tests/bench/books/electrical"
# As large as asked for.
$generate --seed 3 --modules 500 --planes 6 >"$work/large"
grep -o 'columns: [0-9]*' "$work/large" | awk '{ all += $2 } END { exit all != 500 }' || wrong "not 500 modules"
[ "$(grep -c outline "$work/large")" = 6 ] || wrong "not 6 planes"
exit $failed
