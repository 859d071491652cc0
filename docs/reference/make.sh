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
rm -f "$docs"/reference/rules/*.md
for book in "$rules"/*/*/book.yaml; do
    folder=$(dirname "$book")
    "$program" schema rules "$(basename "$folder")" --books "$rules" -o "$docs/reference/rules/$(basename "$folder").md"
done
