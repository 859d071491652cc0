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
lua5.4 "$TOP/tests/generate/designs.lua" 7 40 "$work/a" || wrong "it ends with $?"
lua5.4 "$TOP/tests/generate/designs.lua" 7 20 "$work/b" || wrong "it ends with $?"
lua5.4 "$TOP/tests/generate/designs.lua" 8 20 "$work/c" || wrong "it ends with $?"
for design in $(head -n 20 "$work/a/list"); do
    cmp -s "$design" "$work/b/000/${design##*/}" || wrong "the same seed makes other designs"
    cmp -s "$design" "$work/c/000/${design##*/}" && wrong "another seed makes the same designs"
done
[ "$(find "$work/a/000" -name '*.yaml' -exec sh -c 'grep -v "^title" "$1" | cksum' _ {} \; | sort -u | wc -l)" = 40 ] ||
    wrong "designs that are copies"
for jobs in 1 3; do
    "$PLUMBRULE" check --from-list "$work/a/list" --jobs $jobs --book marrow-bay >"$work/lines$jobs"
    [ $? = 1 ] || wrong "the end with $jobs jobs"
done
cmp -s "$work/lines1" "$work/lines3" || wrong "three jobs write other bytes than one"
[ "$(grep -c '"problems":\[\]' "$work/lines1")" = 40 ] || wrong "designs with problems: $(grep -o '"problems":\[{[^}]*}' "$work/lines1" | head -n 3)"
grep -o '"rule":"[^"]*","title":"[^"]*","kind":"[a-zA-Z]*"' "$work/lines1" | sed 's/,"title.*,"kind/ kind/' | sort -u >"$work/kinds"
for kind in pass fail open; do
    [ "$(grep -c "kind\":\"$kind\"" "$work/kinds")" -ge 25 ] || wrong "fewer than 25 rules $kind anywhere"
done
# As large as asked for.
lua5.4 "$TOP/tests/generate/designs.lua" 3 1 "$work/large" 500
grep -o 'columns: [0-9]*' "$work/large/000/design-000001.yaml" | awk '{ all += $2 } END { exit all != 500 }' || wrong "not 500 modules"
exit $failed
