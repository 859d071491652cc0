#!/bin/sh
# Makes all that is generated from the one table anew: sh docs/reference/make.sh [PROGRAM [DOCS [RULES]]]. The tests
# make it in a folder of their own and compare.
set -eu
top=$(cd "$(dirname "$0")/../.." && pwd)
program=${1:-$top/build/plumbrule}
docs=${2:-$top/docs}
rules=${3:-$top/rules}
mkdir -p "$docs/reference/rules" "$docs/schemas"
for topic in design book values cases result; do
    "$program" schema "$topic" -o "$docs/schemas/$topic.json"
done
for topic in facts words calculators; do
    "$program" schema "$topic" -o "$docs/reference/$topic.md"
done
"$program" schema stubs -o "$docs/schemas/plumbrule.lua"
"$program" schema luacheck -o "$docs/schemas/luacheck.lua"
rm -rf "$docs"/reference/rules
for book in "$rules"/*/*/book.yaml; do
    folder=$(dirname "$book")
    name=$(basename "$folder")
    mkdir -p "$docs/reference/rules/$name"
    "$program" schema rules "$name" --books "$rules" -o "$docs/reference/rules/$name/README.md"
    for rule in "$folder"/*.lua; do
        [ -e "$rule" ] || continue
        rule=$(basename "$rule" .lua)
        "$program" schema rules "$name/$rule" --books "$rules" -o "$docs/reference/rules/$name/$rule.md"
    done
done
