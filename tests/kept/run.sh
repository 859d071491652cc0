#!/bin/sh
# What is kept for a review decides nothing: a program that keeps no answer says the same to the byte, the facts that
# each finding rests on and its working included. Needs PLUMBRULE, FORGETS and TOP.
set -u
work=$(mktemp -d) || exit 1
trap 'rm -rf "$work"' EXIT
lua5.4 "$TOP/tests/bench/generate.lua" --seed 77 --count 20 --modules 4..30 --out "$work/made" || exit 1
{
    cat "$work/made/list"
    find "$TOP/samples" -mindepth 2 -name '*.yaml' ! -path '*/catalogue/*' ! -name '*.signoff.yaml' ! -name '*.waiver*' | sort
} >"$work/list"
failed=0
for town in marrow-bay larch-pass ellowfield; do
    for working in "" --with-working; do
        for program in "$PLUMBRULE" "$FORGETS"; do
            "$program" check --from-list "$work/list" --book $town --jobs 1 $working >"$work/${program##*/}" || [ $? -lt 64 ] || failed=1
        done
        cmp "$work/${PLUMBRULE##*/}" "$work/${FORGETS##*/}" || { echo "WRONG: what is kept decides in $town $working" >&2; failed=1; }
    done
done
[ "$(wc -l <"$work/${PLUMBRULE##*/}")" = "$(wc -l <"$work/list")" ] || { echo "WRONG: a line for each design" >&2; failed=1; }
exit $failed
